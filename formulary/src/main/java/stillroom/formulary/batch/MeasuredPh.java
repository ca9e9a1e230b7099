package stillroom.formulary.batch;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Interval;

/** The pH of the product itself as last read, with what the way of reading leaves open. */
final class MeasuredPh {
    /** A meter whose check reading in a third buffer was right. Common practice, no source. */
    private static final double METER = 0.05;
    /** Strips, at their worst. Common practice, no source. */
    private static final double STRIP = 0.5;

    private MeasuredPh() {}

    /** The newest neat reading; a dilution reads another pH and does not count. */
    static Optional<Interval> of(BatchState state) {
        Optional<Interval> newest = Optional.empty();
        for (Logged<ReadingTaken> reading : state.readings(ReadingKind.PH)) {
            ReadingTaken event = reading.event();
            if (event.value().isPresent() && !mentions(event.how(), "in water")) {
                double open = mentions(event.how(), "strip") ? STRIP : METER;
                newest = event.value().map(ph -> new Interval(ph - open, ph + open));
            }
        }
        return newest;
    }

    private static boolean mentions(Map<String, String> how, String word) {
        return how.values().stream()
                .anyMatch(value -> value.toLowerCase(Locale.ROOT).contains(word));
    }
}
