package stillroom.formulary.reformulation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What is wanted of a new formula.
 *
 * @param without material keys that must go
 * @param useUp material keys of which as much as possible is to be used
 * @param allowed by material key, between what it may be where it is used, whatever its card and the shelf say
 * @param atMost ingredients in all
 * @param answers how many different formulas
 */
public record Wish(
        Goal goal,
        Bands bands,
        Set<String> without,
        Set<String> useUp,
        Map<String, Allowed> allowed,
        OptionalInt atMost,
        int answers) {
    /** Mass fractions, low not above high. */
    public record Allowed(double low, double high) {}

    public Wish {
        allowed = Map.copyOf(allowed);
        without = Set.copyOf(without);
        useUp = Set.copyOf(useUp);
    }

    public Wish(Goal goal, Bands bands, Set<String> without, Set<String> useUp, OptionalInt atMost, int answers) {
        this(goal, bands, without, useUp, Map.of(), atMost, answers);
    }

    public static Wish without(String... materialKeys) {
        return new Wish(Goal.LEAST_CHANGE, Bands.USUAL, Set.of(materialKeys), Set.of(), OptionalInt.empty(), 3);
    }

    public static Wish of(Goal goal) {
        return new Wish(goal, Bands.USUAL, Set.of(), Set.of(), OptionalInt.empty(), 3);
    }

    public Wish with(Bands others) {
        return new Wish(goal, others, without, useUp, allowed, atMost, answers);
    }

    public Wish with(Goal other, int wanted) {
        return new Wish(other, bands, without, useUp, allowed, atMost, wanted);
    }

    public Wish atMost(OptionalInt ingredients) {
        return new Wish(goal, bands, without, useUp, allowed, ingredients, answers);
    }

    /** A material that was to go may stay in part. */
    public Wish allowing(String materialKey, double low, double high) {
        Map<String, Allowed> more = new HashMap<>(allowed);
        more.put(materialKey, new Allowed(low, high));
        Set<String> gone = new HashSet<>(without);
        gone.remove(materialKey);
        return new Wish(goal, bands, gone, useUp, more, atMost, answers);
    }
}
