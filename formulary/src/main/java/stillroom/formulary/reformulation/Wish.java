package stillroom.formulary.reformulation;

import java.util.OptionalInt;
import java.util.Set;

/**
 * What is wanted of a new formula.
 *
 * @param without material keys that must go
 * @param useUp material keys of which as much as possible is to be used
 * @param atMost ingredients in all
 * @param answers how many different formulas
 */
public record Wish(Goal goal, Bands bands, Set<String> without, Set<String> useUp, OptionalInt atMost, int answers) {
    public Wish {
        without = Set.copyOf(without);
        useUp = Set.copyOf(useUp);
    }

    public static Wish without(String materialKey) {
        return new Wish(Goal.LEAST_CHANGE, Bands.USUAL, Set.of(materialKey), Set.of(), OptionalInt.empty(), 3);
    }

    public static Wish of(Goal goal) {
        return new Wish(goal, Bands.USUAL, Set.of(), Set.of(), OptionalInt.empty(), 3);
    }

    public Wish with(Bands others) {
        return new Wish(goal, others, without, useUp, atMost, answers);
    }

    public Wish with(Goal other, int wanted) {
        return new Wish(other, bands, without, useUp, atMost, wanted);
    }

    public Wish atMost(OptionalInt ingredients) {
        return new Wish(goal, bands, without, useUp, ingredients, answers);
    }
}
