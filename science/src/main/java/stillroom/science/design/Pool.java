package stillroom.science.design;

import java.util.List;

/** The regressors of many points, held by point and by term, for products of all points with one vector. */
final class Pool {
    private final int m;
    private final int p;
    private final double[] rows;
    private final double[][] columns;

    Pool(DesignSpace space, List<double[]> points) {
        m = points.size();
        p = space.terms();
        rows = new double[m * p];
        columns = new double[p][m];
        for (int j = 0; j < m; j++) {
            space.fill(points.get(j), rows, j * p);
            for (int k = 0; k < p; k++) {
                columns[k][j] = rows[j * p + k];
            }
        }
    }

    int size() {
        return m;
    }

    int terms() {
        return p;
    }

    /** All regressors, point after point. */
    double[] rows() {
        return rows;
    }

    /** Writes the regressors of a point at the beginning of a row. */
    void load(int point, double[] row) {
        System.arraycopy(rows, point * p, row, 0, p);
    }

    /** One point's product with the first entries of a vector. */
    double product(int point, double[] vector) {
        return Kernel.dot(rows, point * p, vector, p);
    }

    /** Every point's product with the first entries of a vector, and a shift. Four terms at a time: fastest on plain JVMs. */
    void products(double[] vector, double shift, double[] into) {
        java.util.Arrays.fill(into, shift);
        int k = 0;
        for (; k < p - 3; k += 4) {
            four(vector, k, into);
        }
        for (; k < p; k++) {
            double factor = vector[k];
            double[] column = columns[k];
            for (int j = 0; j < m; j++) {
                into[j] += factor * column[j];
            }
        }
    }

    private void four(double[] vector, int k, double[] into) {
        double a = vector[k];
        double b = vector[k + 1];
        double c = vector[k + 2];
        double d = vector[k + 3];
        double[] one = columns[k];
        double[] two = columns[k + 1];
        double[] three = columns[k + 2];
        double[] four = columns[k + 3];
        for (int j = 0; j < into.length; j++) {
            into[j] += a * one[j] + b * two[j] + (c * three[j] + d * four[j]);
        }
    }
}
