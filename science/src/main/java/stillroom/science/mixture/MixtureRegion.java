package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Which mixtures are allowed: bounds on each mass fraction, limits on weighted sums, and fractions that add up to 1.
 *
 * @param lower least fraction of each component, 0..1
 * @param upper largest fraction of each component, 0..1
 * @param constraints limits on weighted sums, each with one coefficient per component
 */
public record MixtureRegion(List<Double> lower, List<Double> upper, List<LinearConstraint> constraints) {
    /** More sides than this are not taken on: a corner's sides are kept as the bits of one word. */
    static final int MOST_SIDES = 62;

    private static final double ROUNDING = 1e-9;

    public MixtureRegion {
        lower = List.copyOf(lower);
        upper = List.copyOf(upper);
        constraints = List.copyOf(constraints);
        int q = lower.size();
        if (q < 2 || upper.size() != q) {
            throw new IllegalArgumentException(q + " lower and " + upper.size()
                    + " upper bounds: a mixture needs one of each for two components or more");
        }
        for (LinearConstraint constraint : constraints) {
            if (constraint.coefficients().size() != q) {
                throw new IllegalArgumentException("a constraint has "
                        + constraint.coefficients().size() + " coefficients for " + q + " components");
            }
        }
    }

    /** All mixtures of so many components. */
    public static MixtureRegion simplex(int components) {
        return new MixtureRegion(Collections.nCopies(components, 0.0), Collections.nCopies(components, 1.0), List.of());
    }

    public int components() {
        return lower.size();
    }

    /** What is left to share out above the lower bounds, 1 - Σ lower [mass fraction]. */
    public double free() {
        return 1 - sum(lower);
    }

    /** L-pseudocomponents (x - lower) / (1 - Σ lower) of a mixture [-]. */
    public double[] pseudo(double[] fractions) {
        double[] z = new double[fractions.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = (fractions[i] - lower.get(i)) / free();
        }
        return z;
    }

    /** The mixture of L-pseudocomponents [mass fraction]. */
    public double[] fractions(double[] pseudo) {
        double[] x = new double[pseudo.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = lower.get(i) + pseudo[i] * free();
        }
        return x;
    }

    /** Whether a mixture adds up to 1 and keeps every limit, but for so much [mass fraction, or unit of the constraint]. */
    public boolean contains(double[] fractions, double tolerance) {
        double sum = 0;
        for (int i = 0; i < fractions.length; i++) {
            sum += fractions[i];
            if (fractions[i] < lower.get(i) - tolerance || fractions[i] > upper.get(i) + tolerance) {
                return false;
            }
        }
        return Math.abs(sum - 1) <= tolerance
                && constraints.stream()
                        .allMatch(
                                c -> c.at(fractions) >= c.min() - tolerance && c.at(fractions) <= c.max() + tolerance);
    }

    /** What is wrong with it, in sentences; none where mixtures exist. */
    public List<String> problems() {
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < components(); i++) {
            boundProblem(i, wrong);
        }
        if (!wrong.isEmpty()) {
            return wrong;
        }
        if (sum(lower) > 1 + ROUNDING) {
            wrong.add("The lower bounds add up to " + percent(sum(lower)) + ": no mixture of 100 % is left.");
        }
        if (sum(upper) < 1 - ROUNDING) {
            wrong.add("The upper bounds add up to " + percent(sum(upper)) + ": 100 % cannot be reached.");
        }
        if (wrong.isEmpty() && Side.of(this).size() + components() > MOST_SIDES) {
            wrong.add("Too many bounds and constraints at once: " + MOST_SIDES + " are taken on at most.");
        }
        if (wrong.isEmpty() && Clipping.corners(this, Side.of(this)).isEmpty()) {
            wrong.add("These exclude each other at 100 %: " + String.join("; ", Conflict.smallest(this)) + ".");
        }
        return wrong;
    }

    private void boundProblem(int i, List<String> wrong) {
        double low = lower.get(i);
        double high = upper.get(i);
        if (!(low >= 0 && low <= 1 && high >= 0 && high <= 1)) {
            wrong.add("Component " + (i + 1) + ": bounds are fractions between 0 and 1, not " + low + " to " + high
                    + ".");
        } else if (low > high) {
            wrong.add("Component " + (i + 1) + ": the lower bound " + percent(low) + " is above the upper bound "
                    + percent(high) + ".");
        }
    }

    /** The region as a body with corners, edges and faces. @throws IllegalArgumentException with the problems, if any */
    public Polytope polytope() {
        List<String> wrong = problems();
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", wrong));
        }
        List<Side> sides = Side.of(this);
        return new Polytope(this, sides, Clipping.corners(this, sides));
    }

    private static double sum(List<Double> figures) {
        return figures.stream().mapToDouble(Double::doubleValue).sum();
    }

    static String percent(double fraction) {
        String text = String.format(Locale.ROOT, "%.4f", 100 * fraction);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "") + " %";
    }
}
