package stillroom.science.mixture;

import java.util.List;

/**
 * A limit on a weighted sum of the fractions: min ≤ Σ a·x ≤ max.
 *
 * @param coefficients a, one per component [any unit]
 * @param min lower limit, or minus infinity [unit of the sum]
 * @param max upper limit, or infinity [unit of the sum]
 */
public record LinearConstraint(List<Double> coefficients, double min, double max) {
    public LinearConstraint {
        coefficients = List.copyOf(coefficients);
        if (coefficients.stream().anyMatch(a -> !Double.isFinite(a))) {
            throw new IllegalArgumentException("coefficients " + coefficients + ": each must be a number");
        }
        if (Double.isNaN(min) || Double.isNaN(max)) {
            throw new IllegalArgumentException("min " + min + ", max " + max + ": each must be a number or infinite");
        }
    }

    /** The weighted sum at a mixture [unit of the coefficients]. */
    public double at(double[] fractions) {
        double sum = 0;
        for (int i = 0; i < fractions.length; i++) {
            sum += coefficients.get(i) * fractions[i];
        }
        return sum;
    }
}
