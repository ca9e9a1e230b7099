package stillroom.desk.batches.bench;

import java.util.Locale;

/**
 * The weight against its target as a bar: positions in percent of its width, which ends a little beyond the tolerance.
 *
 * @param zoneFrom, zoneTo the tolerance
 * @param mark the target
 * @param fill what is in, up to 100
 */
public record DeviationBar(
        double target, double tolerance, double poured, double zoneFrom, double zoneTo, double mark, double fill) {
    /** @param target, tolerance, poured all [g] */
    static DeviationBar of(double target, double tolerance, double poured) {
        double width = width(target, tolerance);
        return new DeviationBar(
                target,
                tolerance,
                poured,
                share(target - tolerance, width),
                share(target + tolerance, width),
                share(target, width),
                share(poured, width));
    }

    private static double width(double target, double tolerance) {
        return Math.max(target * 1.15, target + 2 * tolerance);
    }

    private static double share(double mass, double width) {
        return width <= 0 ? 0 : Math.max(0, Math.min(100, 100 * mass / width));
    }

    public boolean over() {
        return poured > target + tolerance;
    }

    /** For an attribute of a drawing. */
    public String at(double position) {
        return String.format(Locale.ROOT, "%.2f", position);
    }

    public String zoneWidth() {
        return at(zoneTo - zoneFrom);
    }
}
