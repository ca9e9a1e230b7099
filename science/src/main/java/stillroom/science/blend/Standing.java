package stillroom.science.blend;

import java.util.Arrays;

/** Where a simplex stands: the value of each variable, and which variable is basic in each row. Mutable, as the simplex is. */
final class Standing {
    private static final double FEASIBLE = 1e-10;

    final double[] x;
    /** The basic variable of each row. */
    final int[] basis;

    final boolean[] basic;
    private final BoxedProgram program;

    Standing(BoxedProgram program) {
        this.program = program;
        int all = program.rows + program.columns;
        x = new double[all];
        basis = new int[program.rows];
        basic = new boolean[all];
        fromActivities();
    }

    /** The basis of all row activities. */
    final void fromActivities() {
        Arrays.fill(basic, false);
        System.arraycopy(program.lower, 0, x, 0, x.length);
        for (int i = 0; i < basis.length; i++) {
            basis[i] = program.columns + i;
            basic[basis[i]] = true;
        }
    }

    Basis kept() {
        boolean[] atUpper = new boolean[x.length];
        for (int j = 0; j < x.length; j++) {
            atUpper[j] = !basic[j] && isAboveLower(j);
        }
        return new Basis(basis.clone(), atUpper);
    }

    void restore(Basis from) {
        Arrays.fill(basic, false);
        for (int i = 0; i < basis.length; i++) {
            basis[i] = from.basic(i);
            basic[basis[i]] = true;
        }
        for (int j = 0; j < x.length; j++) {
            x[j] = from.atUpper(j) ? program.upper[j] : program.lower[j];
        }
    }

    void exchange(int row, int enters) {
        basic[basis[row]] = false;
        basis[row] = enters;
        basic[enters] = true;
    }

    boolean isAboveLower(int variable) {
        return x[variable] > program.lower[variable];
    }

    double otherBound(int variable) {
        return isAboveLower(variable) ? program.lower[variable] : program.upper[variable];
    }

    double objective() {
        double sum = 0;
        for (int j = 0; j < program.columns; j++) {
            sum += program.cost[j] * x[j];
        }
        return sum;
    }

    /**
     * Each nonbasic variable to the bound that its reduced cost asks for. One that asks for none stays: moved by the rounding of a
     * 0, it would undo what the pivots have mended, again and again.
     *
     * @param nothing a reduced cost below this is 0
     */
    void toBounds(double[] reduced, double nothing) {
        for (int j = 0; j < x.length; j++) {
            if (!basic[j]) {
                boolean atUpper = reduced[j] < -nothing || (reduced[j] <= nothing && isAboveLower(j));
                x[j] = atUpper ? program.upper[j] : program.lower[j];
            }
        }
    }

    /** What the nonbasic variables leave over in each row. */
    void nonbasicSums(double[] sums) {
        for (int i = 0; i < sums.length; i++) {
            double[] row = program.a[i];
            int activity = program.columns + i;
            double sum = basic[activity] ? 0 : -x[activity];
            for (int j = 0; j < program.columns; j++) {
                sum += basic[j] ? 0 : row[j] * x[j];
            }
            sums[i] = sum;
        }
    }

    /** Negative below the lower bound, positive above the upper, 0 within the tolerance. */
    double outside(int variable) {
        double below = x[variable] - program.lower[variable];
        double above = x[variable] - program.upper[variable];
        double slack = FEASIBLE * (1 + Math.abs(program.upper[variable]));
        return below < -slack ? below : above > slack ? above : 0;
    }
}
