package stillroom.science.blend;

/**
 * The ratio test of the boxed dual simplex: goes over breakpoints in the order of their ratio and passes each whose variable
 * can jump to its other bound without making the leaving variable feasible.
 */
final class RatioTest {
    private static final double SMALL = 1e-9;
    /** A row that all flips together mend but for this much is mended: the rest is rounding. */
    private static final double ROUNDING = 1e-10;

    private static final double TIE = 1e-12;

    private final BoxedProgram program;
    private final int[] candidates;
    private final double[] ratio;
    private final int[] flips;
    private int flipped;

    RatioTest(BoxedProgram program) {
        this.program = program;
        int all = program.rows + program.columns;
        candidates = new int[all];
        ratio = new double[all];
        flips = new int[all];
    }

    int flipped() {
        return flipped;
    }

    int flipped(int k) {
        return flips[k];
    }

    /** @return the entering variable, or -1 where none can mend the row: the programme is infeasible */
    int entering(double[] row, double[] reduced, Standing at, double outside, boolean careful) {
        double sign = outside < 0 ? -1 : 1;
        int count = collect(row, reduced, at, sign);
        double slope = Math.abs(outside);
        flipped = 0;
        while (count > 0) {
            int next = next(row, count, careful);
            int j = candidates[next];
            double range = program.upper[j] - program.lower[j];
            slope -= Math.abs(row[j]) * range;
            if (slope <= ROUNDING) {
                return j;
            }
            flips[flipped++] = j;
            count--;
            candidates[next] = candidates[count];
            ratio[next] = ratio[count];
        }
        flipped = 0;
        return -1;
    }

    private int collect(double[] row, double[] reduced, Standing at, double sign) {
        int count = 0;
        for (int j = 0; j < row.length; j++) {
            if (Math.abs(row[j]) <= SMALL || at.basic[j] || program.upper[j] <= program.lower[j]) {
                continue;
            }
            double slant = sign * row[j];
            boolean atUpper = at.isAboveLower(j);
            if (slant > 0 != atUpper) {
                candidates[count] = j;
                ratio[count++] = Math.max(0, reduced[j] / slant);
            }
        }
        return count;
    }

    /** The least ratio; among equal ones the largest pivot, or, where progress has been slow, the first variable. */
    private int next(double[] row, int count, boolean careful) {
        int best = 0;
        for (int k = 1; k < count; k++) {
            double difference = ratio[k] - ratio[best];
            boolean better = Math.abs(difference) <= TIE
                    ? careful
                            ? candidates[k] < candidates[best]
                            : Math.abs(row[candidates[k]]) > Math.abs(row[candidates[best]])
                    : difference < 0;
            best = better ? k : best;
        }
        return best;
    }
}
