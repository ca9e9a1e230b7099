package stillroom.science.blend;

/**
 * A linear programme whose every variable has two finite bounds: least cost x, with A x - s = 0, bounds on x and on the
 * row activities s. Being boxed, it always has a dual feasible basis. Mutable on purpose: a search changes bounds and a few
 * coefficients between solves.
 */
final class BoxedProgram {
    final int rows;
    final int columns;
    /** Row by row, so that a pivot row is a sum of a few long rows. */
    final double[][] a;
    /** Structural columns first, then one activity per row. */
    final double[] cost;

    final double[] lower;
    final double[] upper;

    BoxedProgram(int rows, int columns) {
        this.rows = rows;
        this.columns = columns;
        this.a = new double[rows][columns];
        this.cost = new double[columns + rows];
        this.lower = new double[columns + rows];
        this.upper = new double[columns + rows];
    }

    /** Bounds of a row's activity; an infinite one becomes what the columns' own bounds allow, with room. */
    void bound(int row, double least, double most) {
        double low = 0;
        double high = 0;
        for (int j = 0; j < columns; j++) {
            low += Math.min(a[row][j] * lower[j], a[row][j] * upper[j]);
            high += Math.max(a[row][j] * lower[j], a[row][j] * upper[j]);
        }
        double room = 1 + Math.abs(low) + Math.abs(high);
        lower[columns + row] = Double.isInfinite(least) ? Math.min(low, most) - room : least;
        upper[columns + row] = Double.isInfinite(most) ? Math.max(high, least) + room : most;
    }

    double coefficient(int row, int variable) {
        if (variable < columns) {
            return a[row][variable];
        }
        return variable - columns == row ? -1 : 0;
    }
}
