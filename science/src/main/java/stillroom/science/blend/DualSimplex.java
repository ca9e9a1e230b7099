package stillroom.science.blend;

import static stillroom.science.blend.Vectors.addMultiple;
import static stillroom.science.blend.Vectors.dot;

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

    private static final double PIVOT = 1e-9;
    /** A reduced cost below this, in parts of the largest cost, is 0. */
    private static final double ROUNDING = 1e-12;

    private static final int REFRESH = 60;

    private final BoxedProgram program;
    private final int rows;
    private final int columns;
    private final BasisInverse inverse;
    private final RatioTest ratios;
    private final Standing at;
    private final double[] reduced;
    private final double[] pivotRow;
    private final double[] pivotColumn;
    private final double[] work;
    private int sinceRefresh;

    DualSimplex(BoxedProgram program) {
        this.program = program;
        this.rows = program.rows;
        this.columns = program.columns;
        int all = rows + columns;
        inverse = new BasisInverse(program);
        ratios = new RatioTest(program);
        at = new Standing(program);
        reduced = new double[all];
        pivotRow = new double[all];
        pivotColumn = new double[rows];
        work = new double[rows];
    }

    Basis basis() {
        return at.kept();
    }

    void restore(Basis from) {
        at.restore(from);
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
                    return Outcome.INFEASIBLE;
                }
                refresh();
            }
        }
        return Outcome.STALLED;
    }

    double objective() {
        return at.objective();
    }

    double value(int variable) {
        return at.x[variable];
    }

    /** Change of the objective per unit of a variable that stands at a bound; 0 for a basic one. */
    double reducedCost(int variable) {
        return at.basic[variable] ? 0 : reduced[variable];
    }

    /** Change of the objective per unit by which a row's activity bound is moved up. */
    double rowPrice(int row) {
        return at.basic[columns + row] ? 0 : reduced[columns + row];
    }

    /** Inverse, reduced costs and values anew. */
    private void refresh() {
        if (!inverse.factor(at.basis)) {
            at.fromActivities();
            inverse.factor(at.basis);
        }
        sinceRefresh = 0;
        price();
        at.toBounds(reduced, ROUNDING * largestCost());
        at.nonbasicSums(work);
        for (int i = 0; i < rows; i++) {
            at.x[at.basis[i]] = -dot(inverse.row(i), work);
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
                price += program.cost[at.basis[k]] * inverse.row(k)[i];
            }
            if (price != 0) {
                addMultiple(reduced, program.a[i], -price);
                reduced[columns + i] += price;
            }
        }
        for (int variable : at.basis) {
            reduced[variable] = 0;
        }
    }

    /** The basic variable furthest outside its bounds, in the measure of steepest edge; -1 where all are inside. */
    private int leaving() {
        int best = -1;
        double most = 0;
        for (int i = 0; i < rows; i++) {
            double outside = at.outside(at.basis[i]);
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

    private boolean pivot(int row, boolean careful) {
        int leaves = at.basis[row];
        double outside = at.outside(leaves);
        computePivotRow(row);
        int enters = ratios.entering(pivotRow, reduced, at, outside, careful);
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
            double to = at.otherBound(j);
            for (int i = 0; i < rows; i++) {
                work[i] += program.coefficient(i, j) * (to - at.x[j]);
            }
            at.x[j] = to;
        }
        for (int i = 0; i < rows; i++) {
            at.x[at.basis[i]] -= dot(inverse.row(i), work);
        }
    }

    private void exchange(int row, int enters, double leavesAt) {
        int leaves = at.basis[row];
        double dualStep = reduced[enters] / pivotColumn[row];
        addMultiple(reduced, pivotRow, -dualStep);
        reduced[enters] = 0;
        reduced[leaves] = -dualStep;
        double step = (at.x[leaves] - leavesAt) / pivotColumn[row];
        for (int i = 0; i < rows; i++) {
            at.x[at.basis[i]] -= step * pivotColumn[i];
        }
        at.x[leaves] = leavesAt;
        at.x[enters] += step;
        at.exchange(row, enters);
        inverse.exchange(row, pivotColumn);
        if (++sinceRefresh >= REFRESH) {
            refresh();
        }
    }
}
