package stillroom.science.weighing;

import java.util.List;

/** How well a balance repeats itself, estimated from repeated weighings of the same load. */
public final class Repeatability {
    private Repeatability() {}

    /**
     * The sample standard deviation s of repeated readings [g]: s² = Σ(x − mean)² ÷ (n − 1).
     *
     * <p>Validity: all readings of one load under the same conditions; ten are usual. With ten readings the true value
     * lies between 0.69 s and 1.83 s (95 %, normally distributed readings).
     *
     * @param readingsGrams at least two [g]
     */
    public static double standardDeviationGrams(List<Double> readingsGrams) {
        int n = readingsGrams.size();
        if (n < 2) {
            throw new IllegalArgumentException("a standard deviation needs at least 2 readings, not " + n);
        }
        double mean = readingsGrams.stream().mapToDouble(Double::doubleValue).sum() / n;
        double squares = readingsGrams.stream()
                .mapToDouble(reading -> (reading - mean) * (reading - mean))
                .sum();
        return Math.sqrt(squares / (n - 1));
    }
}
