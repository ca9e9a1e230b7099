package stillroom.science.blend;

/**
 * Decides ingredients by what the prices of a solved relaxation say: if using (or leaving out) one lifts the bound above what
 * is already at hand, it is left out (or used) in all that lies below. A Lagrangian bound: with the rows priced, each
 * ingredient stands alone.
 */
final class Fixing {
    private final Blend blend;
    private final Relaxation relaxation;

    Fixing(Blend blend, Relaxation relaxation) {
        this.blend = blend;
        this.relaxation = relaxation;
    }

    /** @param room by how much the bound may rise before nothing better can lie there */
    int decide(Decisions decisions, DualSimplex solved, double room) {
        int decided = 0;
        for (int j = 0; j < blend.size(); j++) {
            if (decisions.undecided(j)) {
                double present = contribution(j, solved);
                if (used(j, solved) - present > room) {
                    decisions.leaveOut(j);
                    decided++;
                } else if (-present > room) {
                    decisions.use(j);
                    decided++;
                }
            }
        }
        return decided;
    }

    private double contribution(int j, DualSimplex solved) {
        int below = relaxation.below(j);
        int above = relaxation.above(j);
        return solved.reducedCost(below) * solved.value(below)
                + (above < 0 ? 0 : solved.reducedCost(above) * solved.value(above));
    }

    /** Least contribution where it is used: whole price of use, and the best fraction between least dose and most. */
    private double used(int j, DualSimplex solved) {
        Ingredient ingredient = blend.ingredients().get(j);
        double priceOfUse = ingredient.cost().whenUsed();
        for (int g = 0; g < blend.useLimits().size(); g++) {
            if (blend.useLimits().get(g).of().contains(j)) {
                priceOfUse -= solved.rowPrice(relaxation.useRow(g));
            }
        }
        double most = relaxation.most(j);
        double share = priceOfUse / most;
        double lower = solved.reducedCost(relaxation.below(j)) - share;
        if (relaxation.above(j) < 0) {
            return priceOfUse + Math.min(lower * ingredient.leastIfUsed(), lower * most);
        }
        double upper = solved.reducedCost(relaxation.above(j)) - share;
        double now = ingredient.cost().now();
        double best = Math.min(at(ingredient.leastIfUsed(), now, lower, upper), at(most, now, lower, upper));
        boolean kinkInside = now > ingredient.leastIfUsed() && now < most;
        return priceOfUse + (kinkInside ? Math.min(best, lower * now) : best);
    }

    private static double at(double fraction, double now, double lower, double upper) {
        return lower * Math.min(fraction, now) + upper * Math.max(0, fraction - now);
    }
}
