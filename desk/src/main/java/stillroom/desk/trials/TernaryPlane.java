package stillroom.desk.trials;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import stillroom.science.mixture.MixtureRegion;

/** Three components above their least amounts, sharing what the others leave; all others are held. */
final class TernaryPlane {
    private final MixtureRegion region;
    private final int[] axes;
    private final double[] held;
    private final double free;

    private TernaryPlane(MixtureRegion region, int[] axes, double[] held, double free) {
        this.region = region;
        this.axes = axes.clone();
        this.held = held.clone();
        this.free = free;
    }

    /**
     * @param axes which three: that of the top corner, of the right one, of the left one
     * @param held the mixture through which the plane goes, then the process variables
     */
    static Optional<TernaryPlane> through(MixtureRegion region, int[] axes, double[] held) {
        double free = 0;
        for (int axis : axes) {
            free += held[axis] - region.lower().get(axis);
        }
        return free > 1e-9 ? Optional.of(new TernaryPlane(region, axes, held, free)) : Optional.empty();
    }

    double[] held() {
        return held.clone();
    }

    /** What the three share above their least amounts [mass fraction]. */
    double free() {
        return free;
    }

    double lower(int corner) {
        return region.lower().get(axes[corner]);
    }

    /** The mixture at a place; a and b are the shares of the first two axes in what is free. */
    double[] point(double a, double b) {
        double[] point = held.clone();
        double[] shares = {a, b, 1 - a - b};
        for (int corner = 0; corner < 3; corner++) {
            point[axes[corner]] = lower(corner) + shares[corner] * free;
        }
        return point;
    }

    boolean allows(double[] point) {
        return region.contains(Arrays.copyOf(point, region.components()), 1e-9);
    }

    /** Share of an axis in what is free, for a mixture; seen from above where the others differ. */
    double share(int corner, double[] point) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            sum += point[axes[k]] - lower(k);
        }
        return sum > 1e-12 ? (point[axes[corner]] - lower(corner)) / sum : 1.0 / 3;
    }

    static double x(double a, double b) {
        return 40 + 400 * (b + 0.5 * a);
    }

    static double y(double a) {
        return 30 + 346.4 * (1 - a);
    }

    static String spot(double a, double b) {
        return figure(x(a, b)) + "," + figure(y(a));
    }

    static String figure(double place) {
        return String.format(Locale.ROOT, "%.1f", place);
    }
}
