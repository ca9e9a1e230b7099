package stillroom.science.blend;

/**
 * The linear relaxation of a blend under decisions. An undecided ingredient may take any fraction between 0 and its most and
 * counts as used in the proportion of that; one decided as used has its least dose, counts whole, and pays its cost of being
 * used. So each decision tightens the relaxation, and with all decided it is exact.
 *
 * <p>An ingredient whose change is priced has two columns, one up to its present fraction and one above: the price of change
 * being convex, the first is filled before the second.
 */
final class Relaxation {
    private final Blend blend;
    private final BoxedProgram program;
    private final int[] below;
    private final int[] above;
    private final double[] most;
    private double constant;

    Relaxation(Blend blend) {
        this.blend = blend;
        int count = blend.size();
        below = new int[count];
        above = new int[count];
        most = new double[count];
        int columns = 0;
        for (int j = 0; j < count; j++) {
            Ingredient ingredient = blend.ingredients().get(j);
            most[j] = ingredient.most();
            below[j] = columns++;
            above[j] = ingredient.cost().perChange() > 0 ? columns++ : -1;
        }
        program = new BoxedProgram(1 + blend.limits().size() + blend.useLimits().size(), columns);
        fillRows();
    }

    private void fillRows() {
        for (int j = 0; j < blend.size(); j++) {
            set(0, j, blend.isBeside(j) ? 0 : 1);
            bounds(j, 0, most[j]);
        }
        program.bound(0, 1, 1);
        for (int i = 0; i < blend.limits().size(); i++) {
            Limit limit = blend.limits().get(i);
            double scale = limit.scale();
            for (int j = 0; j < blend.size(); j++) {
                set(1 + i, j, limit.values().get(j) / scale);
            }
            program.bound(1 + i, limit.min() / scale, limit.max() / scale);
        }
    }

    BoxedProgram program() {
        return program;
    }

    /** Cost that no column carries, under the decisions last applied. */
    double constant() {
        return constant;
    }

    double most(int ingredient) {
        return most[ingredient];
    }

    void tighten(int ingredient, double newMost) {
        most[ingredient] = Math.min(most[ingredient], newMost);
    }

    int below(int ingredient) {
        return below[ingredient];
    }

    /** -1 where the ingredient has one column only. */
    int above(int ingredient) {
        return above[ingredient];
    }

    int useRow(int useLimit) {
        return 1 + blend.limits().size() + useLimit;
    }

    double fraction(DualSimplex solved, int ingredient) {
        return solved.value(below[ingredient]) + (above[ingredient] < 0 ? 0 : solved.value(above[ingredient]));
    }

    double[] fractions(DualSimplex solved) {
        double[] fractions = new double[blend.size()];
        for (int j = 0; j < fractions.length; j++) {
            fractions[j] = fraction(solved, j);
        }
        return fractions;
    }

    /** @return false where the decisions alone break a use limit or a bound */
    boolean apply(Decisions decisions) {
        constant = 0;
        for (int j = 0; j < blend.size(); j++) {
            if (!applyTo(j, decisions)) {
                return false;
            }
        }
        for (int g = 0; g < blend.useLimits().size(); g++) {
            if (!applyUseLimit(g, decisions)) {
                return false;
            }
        }
        return true;
    }

    private boolean applyTo(int j, Decisions decisions) {
        Ingredient ingredient = blend.ingredients().get(j);
        Cost cost = ingredient.cost();
        boolean used = decisions.used(j);
        double least = used ? ingredient.leastIfUsed() : 0;
        double greatest = decisions.absent(j) ? 0 : most[j];
        if (least > greatest) {
            return false;
        }
        constant += cost.perChange() * cost.now() + (used ? cost.whenUsed() : 0);
        double share = decisions.undecided(j) && greatest > 0 ? cost.whenUsed() / greatest : 0;
        program.cost[below[j]] = cost.perFraction() - (above[j] < 0 ? 0 : cost.perChange()) + share;
        if (above[j] >= 0) {
            program.cost[above[j]] = cost.perFraction() + cost.perChange() + share;
        }
        bounds(j, least, greatest);
        return true;
    }

    private void bounds(int j, double least, double greatest) {
        double now = above[j] < 0 ? 1 : blend.ingredients().get(j).cost().now();
        program.lower[below[j]] = Math.min(least, now);
        program.upper[below[j]] = Math.min(greatest, now);
        if (above[j] >= 0) {
            program.lower[above[j]] = Math.max(0, least - now);
            program.upper[above[j]] = Math.max(0, greatest - now);
        }
    }

    private boolean applyUseLimit(int g, Decisions decisions) {
        UseLimit limit = blend.useLimits().get(g);
        int used = 0;
        for (int j : limit.of()) {
            used += decisions.used(j) ? 1 : 0;
            set(useRow(g), j, decisions.undecided(j) && most[j] > 0 ? 1 / most[j] : 0);
        }
        int row = program.columns + useRow(g);
        program.lower[row] = 0;
        program.upper[row] = limit.atMost() - used;
        return used <= limit.atMost();
    }

    private void set(int row, int j, double value) {
        program.a[row][below[j]] = value;
        if (above[j] >= 0) {
            program.a[row][above[j]] = value;
        }
    }
}
