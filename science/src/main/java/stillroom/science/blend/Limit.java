package stillroom.science.blend;

import java.util.List;

/**
 * A limit on a weighted sum: min <= sum over the ingredients of value times mass fraction <= max.
 *
 * @param values one per ingredient, in the order of the blend
 * @param min negative infinity where there is none
 * @param max positive infinity where there is none
 */
public record Limit(String name, List<Double> values, double min, double max) {
    public Limit {
        values = List.copyOf(values);
        if (values.stream().anyMatch(value -> !Double.isFinite(value))) {
            throw new IllegalArgumentException("the values of " + name + " must be finite numbers");
        }
        if (Double.isNaN(min)
                || Double.isNaN(max)
                || min == Double.POSITIVE_INFINITY
                || max == Double.NEGATIVE_INFINITY) {
            throw new IllegalArgumentException("the limits of " + name + " are " + min + " and " + max);
        }
    }

    public static Limit atMost(String name, List<Double> values, double max) {
        return new Limit(name, values, Double.NEGATIVE_INFINITY, max);
    }

    public static Limit atLeast(String name, List<Double> values, double min) {
        return new Limit(name, values, min, Double.POSITIVE_INFINITY);
    }

    double of(double[] fractions) {
        double sum = 0;
        for (int j = 0; j < fractions.length; j++) {
            sum += values.get(j) * fractions[j];
        }
        return sum;
    }

    /** Least size at which a difference in this limit means something: its values' largest, or 1 where all are 0. */
    double scale() {
        double largest = values.stream().mapToDouble(Math::abs).max().orElse(1);
        return largest > 0 ? largest : 1;
    }
}
