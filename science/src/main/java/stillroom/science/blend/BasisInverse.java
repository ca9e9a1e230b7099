package stillroom.science.blend;

import java.util.Arrays;

/** The explicit inverse of a small basis matrix, row by row. */
final class BasisInverse {
    private static final double SINGULAR = 1e-11;

    private final BoxedProgram program;
    private final int rows;
    private final double[][] inverse;
    private final double[][] matrix;

    BasisInverse(BoxedProgram program) {
        this.program = program;
        this.rows = program.rows;
        this.inverse = new double[rows][rows];
        this.matrix = new double[rows][rows];
    }

    double[] row(int row) {
        return inverse[row];
    }

    /** Inverse times the column of a variable. */
    void column(int variable, double[] into) {
        if (variable >= program.columns) {
            for (int i = 0; i < rows; i++) {
                into[i] = -inverse[i][variable - program.columns];
            }
            return;
        }
        Arrays.fill(into, 0);
        for (int k = 0; k < rows; k++) {
            double value = program.a[k][variable];
            if (value != 0) {
                for (int i = 0; i < rows; i++) {
                    into[i] += inverse[i][k] * value;
                }
            }
        }
    }

    /** Takes a column into the basis at a row, given the inverse times that column. */
    void exchange(int row, double[] column) {
        double[] pivoted = inverse[row];
        for (int k = 0; k < rows; k++) {
            pivoted[k] /= column[row];
        }
        for (int i = 0; i < rows; i++) {
            if (i != row && column[i] != 0) {
                Vectors.addMultiple(inverse[i], pivoted, -column[i]);
            }
        }
    }

    /** Gauss-Jordan with row exchange; false where the basis is singular. */
    boolean factor(int[] basis) {
        for (int i = 0; i < rows; i++) {
            Arrays.fill(inverse[i], 0);
            inverse[i][i] = 1;
            for (int k = 0; k < rows; k++) {
                matrix[i][k] = program.coefficient(i, basis[k]);
            }
        }
        for (int k = 0; k < rows; k++) {
            if (!eliminate(k)) {
                return false;
            }
        }
        return true;
    }

    private boolean eliminate(int k) {
        int best = k;
        for (int i = k + 1; i < rows; i++) {
            best = Math.abs(matrix[i][k]) > Math.abs(matrix[best][k]) ? i : best;
        }
        double pivot = matrix[best][k];
        if (Math.abs(pivot) < SINGULAR) {
            return false;
        }
        swap(matrix, k, best);
        swap(inverse, k, best);
        for (int j = 0; j < rows; j++) {
            matrix[k][j] /= pivot;
            inverse[k][j] /= pivot;
        }
        for (int i = 0; i < rows; i++) {
            double times = matrix[i][k];
            if (i != k && times != 0) {
                Vectors.addMultiple(matrix[i], matrix[k], -times);
                Vectors.addMultiple(inverse[i], inverse[k], -times);
            }
        }
        return true;
    }

    private static void swap(double[][] of, int one, int other) {
        double[] kept = of[one];
        of[one] = of[other];
        of[other] = kept;
    }
}
