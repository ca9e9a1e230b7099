package stillroom.science.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import stillroom.science.blend.DualSimplex.Outcome;

/**
 * Narrows the bounds of each ingredient to what it can reach in any blend better than the best so far: the greatest and,
 * where used, the least fraction that the relaxation allows under a ceiling on the objective. Narrower bounds make each
 * fraction count for more of a use limit, and so lift the bound of the whole search.
 */
final class Tightening {
    /** Bounds are moved back by this much, so that rounding never cuts off a blend. */
    private static final double ROOM = 1e-7;

    private static final int MOST_ITERATIONS = 300;

    private final Blend blend;
    private final Relaxation relaxation;
    private final DualSimplex simplex;
    private final int ceilingRow;
    private final double ceiling;

    /** @param ceiling only blends below this objective matter */
    Tightening(Blend blend, double ceiling) {
        List<Limit> limits = new ArrayList<>(blend.limits());
        limits.add(Limit.atMost("objective", Collections.nCopies(blend.size(), 0.0), ceiling));
        this.blend = blend.withLimits(limits);
        this.relaxation = new Relaxation(this.blend);
        this.simplex = new DualSimplex(relaxation.program());
        this.ceilingRow = limits.size();
        this.ceiling = ceiling;
    }

    Blend narrowed() {
        Decisions first = Decisions.first(blend);
        List<Ingredient> ingredients = new ArrayList<>();
        for (int j = 0; j < blend.size(); j++) {
            ingredients.add(
                    first.undecided(j)
                            ? narrowed(j, first)
                            : blend.ingredients().get(j));
        }
        return blend.withIngredients(ingredients)
                .withLimits(blend.limits().subList(0, blend.limits().size() - 1));
    }

    private Ingredient narrowed(int j, Decisions first) {
        Ingredient ingredient = blend.ingredients().get(j);
        Decisions used = first.with(j, true);
        Outcome outcome = extreme(j, used, -1);
        if (outcome == Outcome.INFEASIBLE) {
            first.leaveOut(j);
            return new Ingredient(ingredient.name(), 0, 0, false, ingredient.cost());
        }
        if (outcome != Outcome.OPTIMAL) {
            return ingredient;
        }
        double most = Math.min(ingredient.most(), relaxation.fraction(simplex, j) + ROOM);
        relaxation.tighten(j, most);
        double least = ingredient.leastIfUsed();
        if (extreme(j, used, 1) == Outcome.OPTIMAL) {
            least = Math.max(least, Math.min(most, relaxation.fraction(simplex, j) - ROOM));
        }
        return new Ingredient(ingredient.name(), least, most, false, ingredient.cost());
    }

    /** Least fraction of an ingredient (greatest, where the sign is negative) under the ceiling. */
    private Outcome extreme(int j, Decisions decisions, double sign) {
        if (!relaxation.apply(decisions)) {
            return Outcome.INFEASIBLE;
        }
        BoxedProgram program = relaxation.program();
        System.arraycopy(program.cost, 0, program.a[ceilingRow], 0, program.columns);
        program.bound(ceilingRow, Double.NEGATIVE_INFINITY, ceiling - relaxation.constant());
        Arrays.fill(program.cost, 0);
        program.cost[relaxation.below(j)] = sign;
        if (relaxation.above(j) >= 0) {
            program.cost[relaxation.above(j)] = sign;
        }
        return simplex.solve(Double.POSITIVE_INFINITY, MOST_ITERATIONS);
    }
}
