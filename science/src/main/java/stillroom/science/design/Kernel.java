package stillroom.science.design;

/** Dense arithmetic on plain arrays. Matrices are square, symmetric, and stored row after row. */
final class Kernel {
    private Kernel() {}

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    static void add(double[] to, double factor, double[] what) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * what[i];
        }
    }

    /** into = matrix · vector. */
    static void times(double[] matrix, double[] vector, double[] into) {
        int n = vector.length;
        for (int i = 0; i < n; i++) {
            double sum = 0;
            int row = i * n;
            for (int k = 0; k < n; k++) {
                sum += matrix[row + k] * vector[k];
            }
            into[i] = sum;
        }
    }

    /** vector' matrix vector, from the lower triangle. */
    static double square(double[] matrix, double[] vector) {
        int n = vector.length;
        double total = 0;
        for (int i = 0; i < n; i++) {
            double sum = 0;
            int row = i * n;
            for (int k = 0; k < i; k++) {
                sum += matrix[row + k] * vector[k];
            }
            total += vector[i] * (2 * sum + matrix[row + i] * vector[i]);
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
