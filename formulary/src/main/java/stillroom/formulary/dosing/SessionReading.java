package stillroom.formulary.dosing;

import java.time.Instant;
import stillroom.formulary.quantity.Grams;

/**
 * One pH on the way of a correction.
 *
 * @param entry number in the log
 * @param ofBulk whether the bulk was read, not the titrated sample
 * @param moment what stood in the vessel when the bulk was read or the sample was taken
 * @param takenGrams mass of the sample; that of the bulk for a reading of the bulk [g]
 * @param sampleGrams dilution poured into the sample so far; zero for the bulk [g]
 * @param strip whether it was read with strips
 */
public record SessionReading(
        int entry,
        Instant at,
        boolean ofBulk,
        BulkMoment moment,
        double takenGrams,
        Grams sampleGrams,
        double pH,
        boolean strip) {}
