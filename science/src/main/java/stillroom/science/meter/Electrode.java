package stillroom.science.meter;

/** What an ideal glass electrode does. */
public final class Electrode {

    /** Gas constant over Faraday constant [V/K]. Source: CODATA 2018, both exact. */
    private static final double GAS_PER_FARADAY = 8.31446261815324 / 96485.33212331;

    private Electrode() {}

    /** Nernst slope, R T ln 10 / F, voltage lost per pH [mV]. */
    public static double nernstMillivolt(double celsius) {
        return 1000 * GAS_PER_FARADAY * (celsius + 273.15) * Math.log(10);
    }

    /** Slope in percent of Nernst from the voltages in two buffers at one temperature [%]. */
    public static double slopePercent(Point first, Point second, double celsius) {
        if (first.pH() == second.pH()) {
            throw new IllegalArgumentException(
                    "both buffers are pH " + first.pH() + ": a slope needs two different ones");
        }
        double perPh = (first.millivolt() - second.millivolt()) / (second.pH() - first.pH());
        return 100 * perPh / nernstMillivolt(celsius);
    }

    /** Voltage at pH 7 by the line through two buffers [mV]. */
    public static double offsetMillivolt(Point first, Point second) {
        double perPh = (second.millivolt() - first.millivolt()) / (second.pH() - first.pH());
        return first.millivolt() + (7 - first.pH()) * perPh;
    }

    /** Voltage of the electrode in a buffer of known pH. */
    public record Point(double pH, double millivolt) {}
}
