package stillroom.science.design;

/** Dense arithmetic on plain arrays. Matrices are square, symmetric, and stored row after row. */
final class Kernel {
    private Kernel() {}

    static double dot(double[] a, double[] b) {
        return dot(a, 0, b, a.length);
    }

    /** Σ a[from + k] b[k], k &lt; n. Four sums side by side, as each addition would else wait for the one before. */
    static double dot(double[] a, int from, double[] b, int n) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int k = 0;
        for (; k < n - 3; k += 4) {
            s0 += a[from + k] * b[k];
            s1 += a[from + k + 1] * b[k + 1];
            s2 += a[from + k + 2] * b[k + 2];
            s3 += a[from + k + 3] * b[k + 3];
        }
        for (; k < n; k++) {
            s0 += a[from + k] * b[k];
        }
        return s0 + s1 + (s2 + s3);
    }

    static void add(double[] to, double factor, double[] what) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * what[i];
        }
    }

    /** to += factor what + otherFactor other, in one go. */
    static void add(double[] to, double factor, double[] what, double otherFactor, double[] other) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * what[i] + otherFactor * other[i];
        }
    }

    /** into = matrix · vector. */
    static void times(double[] matrix, double[] vector, double[] into) {
        int n = vector.length;
        for (int i = 0; i < n; i++) {
            into[i] = dot(matrix, i * n, vector, n);
        }
    }

    /** vector' matrix vector, from the lower triangle. */
    static double square(double[] matrix, double[] vector) {
        int n = vector.length;
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += vector[i] * (2 * dot(matrix, i * n, vector, i) + matrix[i * n + i] * vector[i]);
        }
        return total;
    }

    /** matrix += factor (a b' + b a') / 2. */
    static void update(double[] matrix, double factor, double[] a, double[] b) {
        int n = a.length;
        for (int i = 0; i < n; i++) {
            double ai = 0.5 * factor * a[i];
            double bi = 0.5 * factor * b[i];
            int row = i * n;
            for (int k = 0; k < n; k++) {
                matrix[row + k] += ai * b[k] + bi * a[k];
            }
        }
    }

    /** matrix += factor a a'. */
    static void update(double[] matrix, double factor, double[] a) {
        int n = a.length;
        for (int i = 0; i < n; i++) {
            double ai = factor * a[i];
            int row = i * n;
            for (int k = 0; k < n; k++) {
                matrix[row + k] += ai * a[k];
            }
        }
    }

    /** Inverts a positive definite matrix in place. @return ln det, or minus infinity if it is singular */
    static double invert(double[] matrix, int n) {
        double[] l = matrix.clone();
        double logDeterminant = 0;
        for (int j = 0; j < n; j++) {
            double diagonal = l[j * n + j];
            for (int k = 0; k < j; k++) {
                diagonal -= l[j * n + k] * l[j * n + k];
            }
            if (!(diagonal > 1e-13 * matrix[j * n + j])) {
                return Double.NEGATIVE_INFINITY;
            }
            double root = Math.sqrt(diagonal);
            l[j * n + j] = root;
            logDeterminant += 2 * Math.log(root);
            for (int i = j + 1; i < n; i++) {
                double sum = l[i * n + j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i * n + k] * l[j * n + k];
                }
                l[i * n + j] = sum / root;
            }
        }
        inverseOfFactor(l, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = i; k < n; k++) {
                    sum += l[k * n + i] * l[k * n + j];
                }
                matrix[i * n + j] = sum;
                matrix[j * n + i] = sum;
            }
        }
        return logDeterminant;
    }

    private static void inverseOfFactor(double[] l, int n) {
        for (int j = 0; j < n; j++) {
            l[j * n + j] = 1 / l[j * n + j];
            for (int i = j + 1; i < n; i++) {
                double sum = 0;
                for (int k = j; k < i; k++) {
                    sum -= l[i * n + k] * l[k * n + j];
                }
                l[i * n + j] = sum / l[i * n + i];
            }
        }
    }

    /** tr(a b). */
    static double trace(double[] a, double[] b) {
        return dot(a, b);
    }

    /** a b a for symmetric a and b. */
    static double[] sandwich(double[] a, double[] b, int n) {
        return product(product(a, b, n), a, n);
    }

    private static double[] product(double[] a, double[] b, int n) {
        double[] c = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double factor = a[i * n + k];
                for (int j = 0; j < n; j++) {
                    c[i * n + j] += factor * b[k * n + j];
                }
            }
        }
        return c;
    }
}
