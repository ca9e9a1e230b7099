package stillroom.science.blend;

import java.util.ArrayList;
import java.util.List;

/**
 * A blending problem: mass fractions that add up to 1, at the least sum of costs, within all limits.
 *
 * @param limits their values in the order of the ingredients
 * @param beside how many of the last ingredients stand beside the mix: quantities from 0 to 1 that have costs and enter limits,
 *     but are no part of the whole (such as how far a limit may be passed)
 */
public record Blend(List<Ingredient> ingredients, List<Limit> limits, List<UseLimit> useLimits, int beside) {
    public Blend(List<Ingredient> ingredients, List<Limit> limits, List<UseLimit> useLimits) {
        this(ingredients, limits, useLimits, 0);
    }

    public Blend {
        ingredients = List.copyOf(ingredients);
        limits = List.copyOf(limits);
        useLimits = List.copyOf(useLimits);
        int count = ingredients.size();
        if (count == 0) {
            throw new IllegalArgumentException("a blend needs at least one ingredient");
        }
        for (Limit limit : limits) {
            if (limit.values().size() != count) {
                throw new IllegalArgumentException("limit " + limit.name() + " has "
                        + limit.values().size() + " values for " + count + " ingredients");
            }
        }
        for (UseLimit limit : useLimits) {
            if (limit.of().stream().anyMatch(j -> j < 0 || j >= count)) {
                throw new IllegalArgumentException(limit.name() + " names an ingredient that the blend lacks");
            }
        }
    }

    boolean isBeside(int j) {
        return j >= ingredients.size() - beside;
    }

    public int size() {
        return ingredients.size();
    }

    public Blend withLimits(List<Limit> others) {
        return new Blend(ingredients, others, useLimits, beside);
    }

    public Blend withIngredients(List<Ingredient> others) {
        return new Blend(others, limits, useLimits, beside);
    }

    public Blend withUseLimits(List<UseLimit> others) {
        return new Blend(ingredients, limits, others, beside);
    }

    public Blend and(UseLimit more) {
        List<UseLimit> all = new ArrayList<>(useLimits);
        all.add(more);
        return withUseLimits(all);
    }

    double cost(double[] fractions) {
        double sum = 0;
        for (int j = 0; j < fractions.length; j++) {
            sum += ingredients.get(j).cost().of(fractions[j]);
        }
        return sum;
    }
}
