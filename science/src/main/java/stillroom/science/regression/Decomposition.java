package stillroom.science.regression;

/** X = Q R by Householder reflections, columns scaled to length one first. */
final class Decomposition {
    private final double[][] x;
    private final double[][] q;
    private final double[][] r;
    private final double[] scale;
    private final int n;
    private final int p;

    /** @throws IllegalArgumentException if a column is, within a fraction of its length, a combination of those before */
    Decomposition(double[][] x, double dependent) {
        this.x = x;
        n = x.length;
        p = x[0].length;
        scale = new double[p];
        double[][] a = new double[n][p];
        for (int k = 0; k < p; k++) {
            double squares = 0;
            for (double[] row : x) {
                squares += row[k] * row[k];
            }
            scale[k] = squares == 0 ? 1 : 1 / Math.sqrt(squares);
            for (int i = 0; i < n; i++) {
                a[i][k] = scale[k] * x[i][k];
            }
        }
        r = new double[p][p];
        q = orthogonal(a, dependent);
    }

    private double[][] orthogonal(double[][] a, double dependent) {
        double[][] reflections = new double[p][n];
        for (int k = 0; k < p; k++) {
            double norm = 0;
            for (int i = k; i < n; i++) {
                norm += a[i][k] * a[i][k];
            }
            norm = Math.sqrt(norm);
            if (!(norm > dependent)) {
                throw new IllegalArgumentException("column " + (k + 1)
                        + " depends on those before it: the settings do not tell the terms of the model apart");
            }
            double[] v = reflections[k];
            for (int i = k; i < n; i++) {
                v[i] = a[i][k];
            }
            v[k] += a[k][k] >= 0 ? norm : -norm;
            double squares = 0;
            for (int i = k; i < n; i++) {
                squares += v[i] * v[i];
            }
            for (int j = k; j < p; j++) {
                reflect(a, j, v, squares, k);
            }
            for (int j = k; j < p; j++) {
                r[k][j] = a[k][j];
            }
        }
        return thin(reflections);
    }

    private void reflect(double[][] a, int column, double[] v, double squares, int from) {
        double along = 0;
        for (int i = from; i < n; i++) {
            along += v[i] * a[i][column];
        }
        double factor = 2 * along / squares;
        for (int i = from; i < n; i++) {
            a[i][column] -= factor * v[i];
        }
    }

    private double[][] thin(double[][] reflections) {
        double[][] thin = new double[n][p];
        for (int k = 0; k < p; k++) {
            thin[k][k] = 1;
        }
        for (int k = p - 1; k >= 0; k--) {
            double squares = 0;
            for (int i = k; i < n; i++) {
                squares += reflections[k][i] * reflections[k][i];
            }
            for (int j = 0; j < p; j++) {
                reflect(thin, j, reflections[k], squares, k);
            }
        }
        return thin;
    }

    /** The least squares solution, refined with residuals in twice the precision. */
    double[] refined(double[] y) {
        double[] b = solve(y);
        for (int round = 0; round < 3; round++) {
            double[] correction = solve(residuals(x, b, y));
            for (int k = 0; k < p; k++) {
                b[k] += correction[k];
            }
        }
        return b;
    }

    private double[] solve(double[] y) {
        double[] b = new double[p];
        for (int k = p - 1; k >= 0; k--) {
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += q[i][k] * y[i];
            }
            for (int j = k + 1; j < p; j++) {
                sum -= r[k][j] * b[j];
            }
            b[k] = sum / r[k][k];
        }
        for (int k = 0; k < p; k++) {
            b[k] *= scale[k];
        }
        return b;
    }

    /** y - X b, each sum in twice the working precision. */
    static double[] residuals(double[][] x, double[] b, double[] y) {
        double[] residuals = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            double sum = y[i];
            double rest = 0;
            for (int k = 0; k < b.length; k++) {
                double product = -x[i][k] * b[k];
                double lost = Math.fma(-x[i][k], b[k], -product);
                double next = sum + product;
                double back = next - sum;
                rest += (sum - (next - back)) + (product - back) + lost;
                sum = next;
            }
            residuals[i] = sum + rest;
        }
        return residuals;
    }

    /** Diagonal of the projection on the columns. */
    double[] leverages() {
        double[] leverages = new double[n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < p; k++) {
                leverages[i] += q[i][k] * q[i][k];
            }
        }
        return leverages;
    }

    /** (X'X)⁻¹, row after row. */
    double[] covariance() {
        double[][] inverse = new double[p][p];
        for (int j = 0; j < p; j++) {
            inverse[j][j] = 1 / r[j][j];
            for (int i = j - 1; i >= 0; i--) {
                double sum = 0;
                for (int k = i + 1; k <= j; k++) {
                    sum -= r[i][k] * inverse[k][j];
                }
                inverse[i][j] = sum / r[i][i];
            }
        }
        double[] covariance = new double[p * p];
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < p; j++) {
                double sum = 0;
                for (int k = Math.max(i, j); k < p; k++) {
                    sum += inverse[i][k] * inverse[j][k];
                }
                covariance[i * p + j] = sum * scale[i] * scale[j];
            }
        }
        return covariance;
    }
}
