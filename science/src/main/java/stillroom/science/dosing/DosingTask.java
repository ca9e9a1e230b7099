package stillroom.science.dosing;

import java.util.List;

/**
 * A pH that is to be corrected.
 *
 * @param chemistry what is known of the liquid
 * @param readings in the order in which they were taken, sample and bulk together
 * @param bulkGrams liquid in the bulk without the additions, samples taken off [g]
 * @param bulkAdditions what has been poured into the bulk so far
 * @param corrector what the dose will be poured from
 * @param targetPh where the pH should be
 * @param halfBand how far from the target is still right
 * @param instrument what was read and weighed with
 */
public record DosingTask(
        KnownChemistry chemistry,
        List<PhReading> readings,
        double bulkGrams,
        List<Addition> bulkAdditions,
        Corrector corrector,
        double targetPh,
        double halfBand,
        Instrument instrument) {
    public DosingTask {
        readings = List.copyOf(readings);
        bulkAdditions = List.copyOf(bulkAdditions);
    }
}
