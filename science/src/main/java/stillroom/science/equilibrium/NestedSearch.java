package stillroom.science.equilibrium;

/** The slow, certain way: bracketed search for the ionic strength around a bracketed search for the pH. */
final class NestedSearch {

    private static final int MOST_STEPS = 200;

    private final ChargeBalance balance;
    private int evaluations;

    NestedSearch(ChargeBalance balance) {
        this.balance = balance;
    }

    Equilibrium solve(Solution solution, WaterModel model, int stepsBefore) {
        double low = 0;
        chargeBalanceRoot(Math.sqrt(WaterModel.FROZEN_ABOVE));
        double high = Math.max(balance.ionic, WaterModel.FROZEN_ABOVE);
        double x = Double.NaN;
        double strength = Math.min(balance.ionic, 0.5);
        for (int step = 0; step < MOST_STEPS; step++) {
            double s = Math.sqrt(strength);
            x = chargeBalanceRoot(s);
            double excess = balance.ionic - strength;
            if (excess > 0) {
                low = strength;
            } else {
                high = strength;
            }
            double next = newtonStrength(s, strength, excess);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - strength) <= 1e-13 * (1e-3 + strength)) {
                break;
            }
            strength = next;
        }
        return new Equilibrium(solution, model, balance, x, Math.sqrt(strength), stepsBefore + evaluations);
    }

    private double newtonStrength(double s, double strength, double excess) {
        double chargeX = balance.positiveX - balance.negativeX;
        double chargeS = balance.positiveS - balance.negativeS;
        double ionicAlong = balance.ionicS - balance.ionicX * chargeS / chargeX;
        return strength - excess / (ionicAlong / (2 * s) - 1);
    }

    /** Root of the charge balance at a fixed ionic strength, monotone in x; leaves the sums evaluated there. */
    private double chargeBalanceRoot(double s) {
        double low = balance.lowestX - 1;
        double high = balance.highestX + 1;
        double x = (low + high) / 2;
        for (int step = 0; step < MOST_STEPS; step++) {
            balance.evaluate(x, s);
            evaluations++;
            double g = Math.log(balance.positive / balance.negative);
            if (g > 0) {
                high = x;
            } else {
                low = x;
            }
            double slope = balance.positiveX / balance.positive - balance.negativeX / balance.negative;
            double next = x - g / slope;
            next = next >= low && next <= high ? next : (low + high) / 2;
            if (Math.abs(next - x) <= 1e-14 * Math.abs(x)) {
                return x;
            }
            x = next;
        }
        return x;
    }
}
