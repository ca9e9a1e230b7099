package stillroom.science.equilibrium;

/**
 * Solves the charge balance together with the ionic strength.
 *
 * <p>Newton's method in x = ln a(H+) and s = √I on ln(positive/negative charge) = 0 and s² = I(x, s); should it not
 * settle, a nested search that cannot fail: for a fixed ionic strength the charge balance has exactly one root, and the
 * ionic strength that results crosses the one assumed between 0 and the point where coefficients are frozen.
 * Immutable and safe for any number of threads.
 */
public final class EquilibriumSolver {

    private static final double SETTLED = 1e-8;
    private static final int NEWTON_STEPS = 25;

    private final WaterModel model;

    public EquilibriumSolver(WaterModel model) {
        this.model = model;
    }

    /** The equilibrium of a solution; outside the range of validity it is marked, never refused. */
    public Equilibrium solve(Solution solution) {
        ChargeBalance balance = new ChargeBalance(solution, model);
        double neutral = Math.log(1e-7);
        double x = Math.min(Math.max(neutral, balance.lowestX), balance.highestX);
        double s = Math.sqrt(balance.strongIonic() + 1e-4);
        for (int iteration = 1; iteration <= NEWTON_STEPS; iteration++) {
            balance.evaluate(x, s);
            double p = 1 / balance.positive;
            double n = 1 / balance.negative;
            double g = Math.log(balance.positive * n);
            double gX = balance.positiveX * p - balance.negativeX * n;
            double gS = balance.positiveS * p - balance.negativeS * n;
            double h = s * s - balance.ionic;
            double hX = -balance.ionicX;
            double hS = 2 * s - balance.ionicS;
            double determinant = gX * hS - gS * hX;
            double stepX = (gS * h - g * hS) / determinant;
            double stepS = (hX * g - gX * h) / determinant;
            if (Math.abs(stepX) < SETTLED && Math.abs(stepS) < SETTLED) {
                return new Equilibrium(solution, model, balance, x + stepX, s + stepS, iteration);
            }
            if (Math.abs(stepX) > 1) {
                // Far away: the linearised ionic strength means little, take the charge balance's step alone.
                double alone = x - g / gX;
                x = between(balance, x, alone);
                s = Math.sqrt(Math.min(balance.ionic, 1));
            } else {
                x = between(balance, x, x + stepX);
                s = s + stepS > 0.1 * s ? Math.min(s + stepS, 2 * s + 0.1) : 0.1 * s;
            }
        }
        return new NestedSearch(balance).solve(solution, model, NEWTON_STEPS);
    }

    /** The proposed point, or half-way to the end of the bracket that it crosses (NaN: the middle). */
    private static double between(ChargeBalance balance, double from, double to) {
        if (to >= balance.lowestX && to <= balance.highestX) {
            return to;
        }
        if (Double.isNaN(to)) {
            return (balance.lowestX + balance.highestX) / 2;
        }
        return to < balance.lowestX ? (from + balance.lowestX) / 2 : (from + balance.highestX) / 2;
    }
}
