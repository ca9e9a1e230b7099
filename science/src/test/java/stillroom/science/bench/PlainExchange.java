package stillroom.science.bench;

import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The exchange algorithm as textbooks have it, as a yardstick: from a few random designs, always the one exchange of a run
 * for a candidate that raises the determinant most, until none does. Written apart from the search it measures, and kept
 * plain. Source: fedorov-1972; five random starts are what algdesign-1.2.1.2 makes unless told otherwise (from memory).
 */
final class PlainExchange {
    private static final int STARTS = 5;

    private final double[][] rows;
    private final int runs;
    private final SplittableRandom random;

    PlainExchange(List<double[]> regressors, int runs, long seed) {
        this.rows = regressors.toArray(double[][]::new);
        this.runs = runs;
        this.random = new SplittableRandom(seed);
    }

    /** det(X'X)^(1/p) / n of the best design. */
    double best() {
        double best = 0;
        for (int start = 0; start < STARTS; start++) {
            best = Math.max(best, climb());
        }
        return best;
    }

    private double climb() {
        int[] chosen = new int[runs];
        RealMatrix information = null;
        for (int attempt = 0; attempt < 1000 && information == null; attempt++) {
            for (int i = 0; i < runs; i++) {
                chosen[i] = random.nextInt(rows.length);
            }
            information = regular(chosen);
        }
        for (int step = 0; information != null && step < 2000; step++) {
            if (!exchange(
                    chosen,
                    new LUDecomposition(information).getSolver().getInverse().getData())) {
                break;
            }
            information = regular(chosen);
        }
        int p = rows[0].length;
        return information == null ? 0 : Math.pow(new LUDecomposition(information).getDeterminant(), 1.0 / p) / runs;
    }

    /** The information of a design, or null if it is singular. */
    @SuppressWarnings("NullAway")
    private RealMatrix regular(int[] chosen) {
        double[][] x = new double[runs][];
        for (int i = 0; i < runs; i++) {
            x[i] = rows[chosen[i]];
        }
        RealMatrix design = new Array2DRowRealMatrix(x, false);
        RealMatrix information = design.transposeMultiply(design);
        return new LUDecomposition(information, 1e-14).getSolver().isNonSingular() ? information : null;
    }

    private boolean exchange(int[] chosen, double[][] inverse) {
        double[] variance = new double[rows.length];
        for (int j = 0; j < rows.length; j++) {
            variance[j] = dot(rows[j], times(inverse, rows[j]));
        }
        double most = 1 + 1e-6;
        int out = -1;
        int in = -1;
        for (int i = 0; i < runs; i++) {
            double[] image = times(inverse, rows[chosen[i]]);
            double keep = 1 - variance[chosen[i]];
            for (int j = 0; j < rows.length; j++) {
                double cross = dot(rows[j], image);
                double ratio = (1 + variance[j]) * keep + cross * cross;
                if (ratio > most) {
                    most = ratio;
                    out = i;
                    in = j;
                }
            }
        }
        if (out >= 0) {
            chosen[out] = in;
        }
        return out >= 0;
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] image = new double[vector.length];
        for (int i = 0; i < image.length; i++) {
            image[i] = dot(matrix[i], vector);
        }
        return image;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
