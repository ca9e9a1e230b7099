package stillroom.formulary.batch;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Interval;

/**
 * The pH as last read beside the product's band.
 *
 * @param value as read, whatever the dilution, as the release judges it too
 */
public record PhStanding(Logged<ReadingTaken> reading, double value, Interval band) {

    /** The newest reading with a figure. */
    public static Optional<PhStanding> last(BatchState state, Interval band) {
        List<Logged<ReadingTaken>> read = state.readings(ReadingKind.PH).stream()
                .filter(reading -> reading.event().value().isPresent())
                .toList();
        return read.stream()
                .reduce((earlier, later) -> later)
                .map(one -> new PhStanding(one, one.event().value().orElseThrow(), band));
    }

    public boolean inside() {
        return band.contains(value);
    }

    /** Whether it is above the band: an acid brings it down. */
    public boolean above() {
        return value > band.high();
    }

    /** Whether the reading still tells what is in the pot: nothing that moves the pH came in since. */
    boolean holds(BatchState state) {
        return reading.number() > lastChange(state);
    }

    /** The newest planned pour, or pour to move the pH; 0 for none. */
    static int lastChange(BatchState state) {
        return state.pours().stream()
                .filter(pour -> changes(pour.event()))
                .mapToInt(Logged::number)
                .max()
                .orElse(0);
    }

    /** The newest acid or base that no line asked for, or that followed a reading; 0 for none. */
    static int lastCorrection(BatchState state) {
        int firstReading = state.readings(ReadingKind.PH).stream()
                .mapToInt(Logged::number)
                .min()
                .orElse(Integer.MAX_VALUE);
        return state.pours().stream()
                .filter(pour -> corrects(pour.event()))
                .filter(pour -> pour.event().lineId().isEmpty() || pour.number() > firstReading)
                .mapToInt(Logged::number)
                .max()
                .orElse(0);
    }

    private static boolean changes(Poured event) {
        return event.purpose() == Purpose.LINE || corrects(event);
    }

    private static boolean corrects(Poured event) {
        return event.purpose() == Purpose.CORRECTION_ACID || event.purpose() == Purpose.CORRECTION_BASE;
    }
}
