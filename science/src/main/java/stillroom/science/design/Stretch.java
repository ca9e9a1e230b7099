package stillroom.science.design;

/**
 * The regressors along a straight line of points: polynomials of low degree, known from as many points as they need and
 * weighed by Lagrange's formula anywhere between.
 */
final class Stretch {
    private static final int GRID = 24;

    private final double[][] nodes;
    private final double[] at;
    private final double[] weights;

    Stretch(int degree, int size) {
        nodes = new double[degree + 1][size];
        at = new double[degree + 1];
        weights = new double[degree + 1];
        for (int k = 0; k <= degree; k++) {
            at[k] = degree == 0 ? 0.5 : 0.5 - 0.5 * Math.cos(Math.PI * k / degree);
        }
    }

    /** Regressors at the nodes; to be filled in. */
    double[][] nodes() {
        return nodes;
    }

    /** Places of the nodes, 0..1. */
    double[] places() {
        return at;
    }

    /** What is to be made large along the line, as a function of the weights of the nodes. */
    interface Gain {
        double at(double[] weights);
    }

    /** The best place, 0..1: the best of a grid, then parabolas. */
    double best(Gain gain) {
        int top = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k <= GRID; k++) {
            double value = value(gain, (double) k / GRID);
            if (value > most) {
                most = value;
                top = k;
            }
        }
        return polish(gain, (double) top / GRID, most);
    }

    private double polish(Gain gain, double start, double startValue) {
        double place = start;
        double value = startValue;
        double step = 1.0 / GRID;
        for (int round = 0; round < 40 && step > 1e-9; round++) {
            double left = Math.max(0, place - step);
            double right = Math.min(1, place + step);
            double a = value(gain, left);
            double b = value(gain, right);
            double next = vertex(left, a, place, value, right, b);
            double there = value(gain, next);
            double moved = Math.abs(next - place);
            if (there > value) {
                place = next;
                value = there;
            }
            if (a > value || b > value) {
                place = a > b ? left : right;
                value = Math.max(a, b);
            }
            step = Math.max(0.1 * step, Math.min(0.5 * step, 4 * moved));
        }
        return place;
    }

    private static double vertex(double x0, double y0, double x1, double y1, double x2, double y2) {
        double p = (x1 - x0) * (y1 - y2);
        double q = (x1 - x2) * (y1 - y0);
        if (Math.abs(p - q) < 1e-300) {
            return x1;
        }
        double place = x1 - 0.5 * ((x1 - x0) * p - (x1 - x2) * q) / (p - q);
        return Math.min(x2, Math.max(x0, place));
    }

    double value(Gain gain, double place) {
        for (int k = 0; k < at.length; k++) {
            double product = 1;
            for (int l = 0; l < at.length; l++) {
                if (l != k) {
                    product *= (place - at[l]) / (at[k] - at[l]);
                }
            }
            weights[k] = product;
        }
        return gain.at(weights);
    }

    /** Σ w_k w_l node_k' matrix node_l as a table over k and l. */
    double[][] form(double[] matrix) {
        int n = nodes.length;
        double[][] table = new double[n][n];
        double[] image = new double[nodes[0].length];
        for (int k = 0; k < n; k++) {
            Kernel.times(matrix, nodes[k], image);
            for (int l = 0; l <= k; l++) {
                table[k][l] = Kernel.dot(image, nodes[l]);
                table[l][k] = table[k][l];
            }
        }
        return table;
    }

    /** node_k · vector for each k. */
    double[] products(double[] vector) {
        double[] products = new double[nodes.length];
        for (int k = 0; k < products.length; k++) {
            products[k] = Kernel.dot(nodes[k], vector);
        }
        return products;
    }

    static double square(double[][] table, double[] weights) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            for (int l = 0; l < weights.length; l++) {
                sum += weights[k] * weights[l] * table[k][l];
            }
        }
        return sum;
    }
}
