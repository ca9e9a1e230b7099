package stillroom.science.mixture;

/** The regressors of a model, ready for many evaluations. Immutable. */
public final class Regressors {
    private final int[][] factors;
    private final int degree;

    public Regressors(MixtureModel model) {
        factors = model.terms().stream()
                .map(term -> java.util.stream.IntStream.concat(
                                term.components().stream().mapToInt(Integer::intValue),
                                term.processes().stream().mapToInt(k -> model.components() + k))
                        .toArray())
                .toArray(int[][]::new);
        degree = model.degree();
    }

    public int count() {
        return factors.length;
    }

    /** The largest power in which a point enters along a straight line. */
    public int degree() {
        return degree;
    }

    /** Writes one value per term. @param point fractions or pseudocomponents, then coded process variables */
    public void fill(double[] point, double[] into) {
        for (int t = 0; t < factors.length; t++) {
            double product = 1;
            for (int i : factors[t]) {
                product *= point[i];
            }
            into[t] = product;
        }
    }

    /** The slope of Σ weight·regressor along each entry of a point, written into the last argument. */
    public void slopes(double[] point, double[] weights, double[] into) {
        java.util.Arrays.fill(into, 0);
        for (int t = 0; t < factors.length; t++) {
            int[] entries = factors[t];
            for (int skip = 0; skip < entries.length; skip++) {
                double product = weights[t];
                for (int k = 0; k < entries.length; k++) {
                    product *= k == skip ? 1 : point[entries[k]];
                }
                into[entries[skip]] += product;
            }
        }
    }
}
