package stillroom.science.blend;

import java.util.Arrays;

/**
 * Bounded dual simplex with an explicit inverse of the basis, exact steepest edge weights and bound flipping. Meant for few
 * rows (some tens) and many columns, solved again and again from a basis near the answer. Not thread-safe.
 *
 * <p>Source: koberstein-2005, algorithms 2 and 3 and section 3.3 (bound flipping), with the weights computed anew each time,
 * which a small explicit inverse makes cheap.
 */
final class DualSimplex {
    enum Outcome {
        OPTIMAL,
        INFEASIBLE,
        /** The dual objective has passed the given cutoff: the optimum, if any, is above it. */
        ABOVE_CUTOFF,
        /** Out of iterations: nothing is known but the bound. */
        STALLED
    }

    private static final double FEASIBLE = 1e-10;
    private static final double PIVOT = 1e-9;
    /** A reduced cost below this, in parts of the largest cost, is 0. */
    private static final double ROUNDING = 1e-12;

    private static final int REFRESH = 60;

    private final BoxedProgram program;
    private final int rows;
    private final int columns;
    private final BasisInverse inverse;
    private final RatioTest ratios;
    private final double[] x;
    private final double[] reduced;
    private final double[] pivotRow;
    private final double[] pivotColumn;
    private final double[] work;
    private final int[] basis;
    private final boolean[] basic;
    private int conflictRow = -1;
    private int sinceRefresh;
    private long iterations;

    DualSimplex(BoxedProgram program) {
        this.program = program;
        this.rows = program.rows;
        this.columns = program.columns;
        int all = rows + columns;
        inverse = new BasisInverse(program);
        ratios = new RatioTest(program);
        x = new double[all];
        reduced = new double[all];
        pivotRow = new double[all];
        pivotColumn = new double[rows];
        work = new double[rows];
        basis = new int[rows];
        basic = new boolean[all];
        fromActivities();
    }

    /** Starts from the basis of all row activities. */
    final void fromActivities() {
        Arrays.fill(basic, false);
        System.arraycopy(program.lower, 0, x, 0, x.length);
        for (int i = 0; i < rows; i++) {
            basis[i] = columns + i;
            basic[columns + i] = true;
        }
    }

    Basis basis() {
        boolean[] atUpper = new boolean[x.length];
        for (int j = 0; j < x.length; j++) {
            atUpper[j] = !basic[j] && x[j] > program.lower[j];
        }
        return new Basis(basis.clone(), atUpper);
    }

    void restore(Basis from) {
        Arrays.fill(basic, false);
        for (int i = 0; i < rows; i++) {
            basis[i] = from.basic(i);
            basic[basis[i]] = true;
        }
        for (int j = 0; j < x.length; j++) {
            x[j] = from.atUpper(j) ? program.upper[j] : program.lower[j];
        }
    }

    Outcome solve(double cutoff, int mostIterations) {
        refresh();
        for (int turn = 0; turn < mostIterations; turn++) {
            if (objective() > cutoff) {
                return Outcome.ABOVE_CUTOFF;
            }
            int row = leaving();
            if (row < 0) {
                if (sinceRefresh == 0) {
                    return Outcome.OPTIMAL;
                }
                refresh();
            } else if (!pivot(row, turn > 20 * (rows + 20))) {
                if (sinceRefresh == 0) {
                    conflictRow = row;
                    return Outcome.INFEASIBLE;
                }
                refresh();
            }
        }
        return Outcome.STALLED;
    }

    double objective() {
        double sum = 0;
        for (int j = 0; j < columns; j++) {
            sum += program.cost[j] * x[j];
        }
        return sum;
    }

    double value(int variable) {
        return x[variable];
    }

    /** Change of the objective per unit of a variable that stands at a bound; 0 for a basic one. */
    double reducedCost(int variable) {
        return basic[variable] ? 0 : reduced[variable];
    }

    /** Change of the objective per unit by which a row's activity bound is moved up. */
    double rowPrice(int row) {
        return basic[columns + row] ? 0 : reduced[columns + row];
    }

    /** After INFEASIBLE: the multiplier of each row in a sum of rows that no values within the bounds can satisfy. */
    double[] conflictMultipliers() {
        return inverse.row(conflictRow).clone();
    }

    long iterations() {
        return iterations;
    }

    /**
     * Inverse, reduced costs and values anew; each nonbasic variable to the bound that its reduced cost asks for. One that asks for
     * none stays: moved by the rounding of a 0, it would undo what the pivots have mended, again and again.
     */
    private void refresh() {
        if (!inverse.factor(basis)) {
            fromActivities();
            inverse.factor(basis);
        }
        sinceRefresh = 0;
        price();
        double nothing = ROUNDING * largestCost();
        for (int j = 0; j < x.length; j++) {
            if (!basic[j]) {
                boolean atUpper = reduced[j] < -nothing || (reduced[j] <= nothing && x[j] > program.lower[j]);
                x[j] = atUpper ? program.upper[j] : program.lower[j];
            }
        }
        Arrays.fill(work, 0);
        for (int i = 0; i < rows; i++) {
            double[] row = program.a[i];
            double sum = basic[columns + i] ? 0 : -x[columns + i];
            for (int j = 0; j < columns; j++) {
                sum += basic[j] ? 0 : row[j] * x[j];
            }
            work[i] = sum;
        }
        for (int i = 0; i < rows; i++) {
            x[basis[i]] = -dot(inverse.row(i), work);
        }
    }

    private double largestCost() {
        double largest = 1;
        for (int j = 0; j < columns; j++) {
            largest = Math.max(largest, Math.abs(program.cost[j]));
        }
        return largest;
    }

    private void price() {
        System.arraycopy(program.cost, 0, reduced, 0, columns);
        Arrays.fill(reduced, columns, columns + rows, 0);
        for (int i = 0; i < rows; i++) {
            double price = 0;
            for (int k = 0; k < rows; k++) {
                price += program.cost[basis[k]] * inverse.row(k)[i];
            }
            if (price != 0) {
                addMultiple(reduced, program.a[i], -price);
                reduced[columns + i] += price;
            }
        }
        for (int variable : basis) {
            reduced[variable] = 0;
        }
    }

    /** The basic variable furthest outside its bounds, in the measure of steepest edge; -1 where all are inside. */
    private int leaving() {
        int best = -1;
        double most = 0;
        for (int i = 0; i < rows; i++) {
            double outside = outside(basis[i]);
            if (outside != 0) {
                double[] row = inverse.row(i);
                double score = outside * outside / dot(row, row);
                if (score > most) {
                    most = score;
                    best = i;
                }
            }
        }
        return best;
    }

    /** Negative below the lower bound, positive above the upper, 0 within the tolerance. */
    private double outside(int variable) {
        double below = x[variable] - program.lower[variable];
        double above = x[variable] - program.upper[variable];
        double slack = FEASIBLE * (1 + Math.abs(program.upper[variable]));
        return below < -slack ? below : above > slack ? above : 0;
    }

    private boolean pivot(int row, boolean careful) {
        int leaves = basis[row];
        double outside = outside(leaves);
        computePivotRow(row);
        int enters = ratios.entering(pivotRow, reduced, x, basic, outside, careful);
        if (enters < 0) {
            return false;
        }
        flip();
        inverse.column(enters, pivotColumn);
        double pivot = pivotColumn[row];
        if (Math.abs(pivot) < PIVOT || Math.abs(pivot - pivotRow[enters]) > 1e-7 * (1 + Math.abs(pivot))) {
            if (sinceRefresh > 0) {
                refresh();
                return true;
            }
        }
        exchange(row, enters, outside < 0 ? program.lower[leaves] : program.upper[leaves]);
        return true;
    }

    private void computePivotRow(int row) {
        double[] rho = inverse.row(row);
        Arrays.fill(pivotRow, 0, columns, 0);
        for (int i = 0; i < rows; i++) {
            if (rho[i] != 0) {
                addMultiple(pivotRow, program.a[i], rho[i]);
            }
            pivotRow[columns + i] = -rho[i];
        }
    }

    /** Moves the variables that the ratio test passed over to their other bound. */
    private void flip() {
        if (ratios.flipped() == 0) {
            return;
        }
        Arrays.fill(work, 0);
        for (int k = 0; k < ratios.flipped(); k++) {
            int j = ratios.flipped(k);
            double to = x[j] > program.lower[j] ? program.lower[j] : program.upper[j];
            for (int i = 0; i < rows; i++) {
                work[i] += program.coefficient(i, j) * (to - x[j]);
            }
            x[j] = to;
        }
        for (int i = 0; i < rows; i++) {
            x[basis[i]] -= dot(inverse.row(i), work);
        }
    }

    private void exchange(int row, int enters, double leavesAt) {
        int leaves = basis[row];
        double dualStep = reduced[enters] / pivotColumn[row];
        addMultiple(reduced, pivotRow, -dualStep);
        reduced[enters] = 0;
        reduced[leaves] = -dualStep;
        double step = (x[leaves] - leavesAt) / pivotColumn[row];
        for (int i = 0; i < rows; i++) {
            x[basis[i]] -= step * pivotColumn[i];
        }
        x[leaves] = leavesAt;
        x[enters] += step;
        basis[row] = enters;
        basic[leaves] = false;
        basic[enters] = true;
        inverse.exchange(row, pivotColumn);
        iterations++;
        if (++sinceRefresh >= REFRESH) {
            refresh();
        }
    }

    static double dot(double[] left, double[] right) {
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            sum += left[i] * right[i];
        }
        return sum;
    }

    /** Adds a multiple of the shorter array to the front of the longer. */
    static void addMultiple(double[] to, double[] of, double times) {
        int length = Math.min(to.length, of.length);
        for (int j = 0; j < length; j++) {
            to[j] += times * of[j];
        }
    }
}
