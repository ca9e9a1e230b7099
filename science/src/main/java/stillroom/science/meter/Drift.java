package stillroom.science.meter;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import stillroom.science.regression.StraightLine;

/**
 * How a pH moves over the days.
 *
 * <p>Slope of a straight line; its error is the larger of what the residuals and what the meter's repeatability give. A
 * drift is a slope whose 95 % interval leaves out zero while the line moves, over the days observed, by more than three
 * times the repeatability; anything else is noise.
 *
 * @param perDay slope [pH/day]
 * @param lowPerDay lower end of the 95 % interval [pH/day]
 * @param highPerDay upper end [pH/day]
 * @param verdict drift or noise
 */
public record Drift(double perDay, double lowPerDay, double highPerDay, Verdict verdict) {

    /** What the slope means. */
    public enum Verdict {
        /** More than the meter's noise. */
        DRIFT,
        /** Not to be told from the meter's noise. */
        NOISE,
        /** One reading, or all at one time. */
        TOO_FEW_READINGS
    }

    /**
     * A reading at an age.
     *
     * @param day since the first reading or since making [day]
     * @param pH as read
     */
    public record DayReading(double day, double pH) {}

    /** Judges readings of one dilution and one electrode, taken with a meter of a repeatability [pH]. */
    public static Drift of(List<DayReading> readings, double repeatability) {
        if (!(repeatability > 0)) {
            throw new IllegalArgumentException("repeatability is " + repeatability + " pH, it must be above 0");
        }
        if (readings.stream().mapToDouble(DayReading::day).distinct().count() < 2) {
            return new Drift(0, 0, 0, Verdict.TOO_FEW_READINGS);
        }
        StraightLine line = StraightLine.fit(
                readings.stream().map(DayReading::day).toList(),
                readings.stream().map(DayReading::pH).toList());
        double half = halfWidth(line, repeatability);
        double moved = Math.abs(line.slope()) * days(readings);
        boolean drifts = Math.abs(line.slope()) > half && moved > 3 * repeatability;
        return new Drift(
                line.slope(), line.slope() - half, line.slope() + half, drifts ? Verdict.DRIFT : Verdict.NOISE);
    }

    private static double halfWidth(StraightLine line, double repeatability) {
        double byMeter = new NormalDistribution().inverseCumulativeProbability(0.975)
                * repeatability
                / Math.sqrt(line.sumOfSquaresX());
        if (line.degreesOfFreedom() == 0) {
            return byMeter;
        }
        double byResiduals = line.slopeHalfWidth(0.95);
        return Math.max(byMeter, byResiduals);
    }

    private static double days(List<DayReading> readings) {
        double first = readings.stream().mapToDouble(DayReading::day).min().orElse(0);
        double last = readings.stream().mapToDouble(DayReading::day).max().orElse(0);
        return last - first;
    }
}
