package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.List;

/** A half-space normal·x ≤ offset, with the words of the bound or constraint that it stands for. */
final class Side {
    private final double[] normal;
    private final double offset;
    private final String words;

    private Side(double[] normal, double offset, String words) {
        this.normal = normal;
        this.offset = offset;
        this.words = words;
    }

    /** Upper bounds and constraints; the lower bounds are the body that they cut. */
    static List<Side> of(MixtureRegion region) {
        List<Side> sides = new ArrayList<>();
        int q = region.components();
        for (int i = 0; i < q; i++) {
            double high = region.upper().get(i);
            if (high < region.lower().get(i) + region.free()) {
                double[] normal = new double[q];
                normal[i] = 1;
                sides.add(new Side(normal, high, "component " + (i + 1) + " at most " + MixtureRegion.percent(high)));
            }
        }
        for (int k = 0; k < region.constraints().size(); k++) {
            constraint(region.constraints().get(k), "constraint " + (k + 1), sides);
        }
        return sides;
    }

    private static void constraint(LinearConstraint constraint, String name, List<Side> sides) {
        double[] a = constraint.coefficients().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        double size = 0;
        for (double one : a) {
            size = Math.max(size, Math.abs(one));
        }
        double scale = size == 0 ? 1 : 1 / size;
        if (constraint.max() < Double.POSITIVE_INFINITY) {
            sides.add(new Side(times(a, scale), scale * constraint.max(), name + " at most " + constraint.max()));
        }
        if (constraint.min() > Double.NEGATIVE_INFINITY) {
            sides.add(new Side(times(a, -scale), -scale * constraint.min(), name + " at least " + constraint.min()));
        }
    }

    private static double[] times(double[] a, double factor) {
        double[] scaled = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            scaled[i] = factor * a[i];
        }
        return scaled;
    }

    /** How far a point lies beyond it; negative inside [mass fraction]. */
    double beyond(double[] point) {
        double sum = -offset;
        for (int i = 0; i < point.length; i++) {
            sum += normal[i] * point[i];
        }
        return sum;
    }

    /** How fast a direction leads outwards [-]. */
    double slope(double[] direction) {
        double sum = 0;
        for (int i = 0; i < direction.length; i++) {
            sum += normal[i] * direction[i];
        }
        return Math.abs(sum) < 1e-14 ? 0 : sum;
    }

    String words() {
        return words;
    }
}
