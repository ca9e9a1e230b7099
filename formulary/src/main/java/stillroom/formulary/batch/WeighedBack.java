package stillroom.formulary.batch;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A whole vessel put on the balance again.
 *
 * @param expected tare and net by the book; none where the tare is not known, and then nothing can be concluded [g]
 */
public record WeighedBack(int entry, String vessel, Grams gross, Optional<Grams> expected) {
    /** What is missing against the book; negative where there is more than was booked [g]. */
    public Optional<Grams> missing() {
        return expected.map(book -> book.minus(gross));
    }
}
