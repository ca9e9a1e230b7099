package stillroom.science.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was found when the meter was set with two buffers.
 *
 * @param low the buffer of lower pH
 * @param high the buffer of higher pH
 * @param celsius temperature of the buffers [°C]
 * @param slope what the meter or the voltages say; empty when it shows none
 * @param check a reading in a third buffer; empty when none was taken
 */
public record Calibration(
        BufferTable low, BufferTable high, double celsius, Optional<Slope> slope, Optional<Check> check) {

    /**
     * Slope and offset of the electrode.
     *
     * @param percent of the Nernst slope [%]
     * @param offsetMillivolt at pH 7 [mV]
     */
    public record Slope(double percent, double offsetMillivolt) {}

    /**
     * A reading in a buffer that was not used for setting.
     *
     * @param buffer third buffer
     * @param celsius its temperature [°C]
     * @param pHRead what the meter showed
     */
    public record Check(BufferTable buffer, double celsius, double pHRead) {}

    /** Slope outside 95 to 105 %: common practice, no source. */
    public static final double LEAST_SLOPE_PERCENT = 95;

    public static final double MOST_SLOPE_PERCENT = 105;
    /** Offset beyond 30 mV, half a pH: common practice, no source. */
    public static final double MOST_OFFSET_MILLIVOLT = 30;
    /** Third buffer off by more than 0.05: common practice, no source. */
    public static final double MOST_CHECK_DIFFERENCE = 0.05;

    /** Why the calibration does not hold, one sentence each with the figures; empty when it does. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        slope.ifPresent(found -> slopeFaults(found, faults));
        check.ifPresent(found -> checkFaults(found, faults));
        if (slope.isEmpty() && check.isEmpty()) {
            faults.add(
                    "neither slope and offset nor a reading in a third buffer: nothing shows that the meter is right");
        }
        for (BufferTable buffer : List.of(low, high)) {
            if (buffer.pHAt(celsius).isEmpty()) {
                faults.add(say("%s has no value at %s °C", buffer.name(), celsius));
            }
        }
        return List.copyOf(faults);
    }

    private static void slopeFaults(Slope found, List<String> faults) {
        if (!(found.percent() >= LEAST_SLOPE_PERCENT && found.percent() <= MOST_SLOPE_PERCENT)) {
            faults.add(say("slope %.1f %%, allowed are 95 to 105 %%", found.percent()));
        }
        if (!(Math.abs(found.offsetMillivolt()) <= MOST_OFFSET_MILLIVOLT)) {
            faults.add(say("offset %.0f mV, allowed are 30 mV either way", found.offsetMillivolt()));
        }
    }

    private static void checkFaults(Check found, List<String> faults) {
        OptionalDouble truth = found.buffer().pHAt(found.celsius());
        if (truth.isEmpty()) {
            faults.add(say("%s has no value at %s °C", found.buffer().name(), found.celsius()));
        } else if (!(Math.abs(found.pHRead() - truth.getAsDouble()) <= MOST_CHECK_DIFFERENCE + 1e-9)) {
            faults.add(say(
                    "%s read as %.2f, it is %.2f at %s °C: allowed are 0.05",
                    found.buffer().name(), found.pHRead(), truth.getAsDouble(), found.celsius()));
        }
    }

    /** Whether a pH lies between the two buffers. */
    public boolean brackets(double pH) {
        OptionalDouble below = low.pHAt(celsius);
        OptionalDouble above = high.pHAt(celsius);
        return below.isPresent() && above.isPresent() && below.getAsDouble() <= pH && pH <= above.getAsDouble();
    }

    private static String say(String format, Object... figures) {
        return String.format(Locale.ROOT, format, figures);
    }
}
