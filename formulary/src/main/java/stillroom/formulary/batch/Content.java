package stillroom.formulary.batch;

import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.quantity.Grams;

/**
 * One material that came in with one entry, or the part of it that is in one place; negative where it was taken back.
 *
 * @param entry number of the log entry that brought it
 * @param mass what of it is there [g]
 */
public record Content(
        int entry, Optional<String> lineId, String materialKey, Optional<String> lot, Purpose purpose, Grams mass) {
    Content withMass(Grams other) {
        return new Content(entry, lineId, materialKey, lot, purpose, other);
    }
}
