package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.blend.Blend;
import stillroom.science.blend.Cost;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Limit;
import stillroom.science.blend.UseLimit;

/** A wish as a blending problem: candidates are its ingredients, requirements its limits, in the same order. */
record Problem(
        List<Candidate> candidates, List<Requirement> requirements, Blend blend, double presentCost, Present present) {
    /** Least dose of a newcomer whose card states no range of use. */
    private static final double LEAST_DOSE = 0.001;
    /** What using up is worth against all else. */
    private static final double USE_UP = 10;

    private static final double COUNT_SHARE = 0.05;

    static Problem of(Recast recast, Shelf shelf, Wish wish) {
        Present present = Present.of(recast);
        List<Candidate> candidates = Candidates.of(recast, present, shelf, wish);
        List<Requirement> requirements = Requirements.of(recast, present, wish.bands(), candidates);
        double presentCost = candidates.stream()
                .mapToDouble(one -> one.now() * one.costPer100g().orElse(0))
                .sum();
        List<Ingredient> ingredients = candidates.stream()
                .map(one -> ingredient(one, shelf, wish, presentCost))
                .toList();
        List<Limit> limits = requirements.stream()
                .map(each -> new Limit(each.name(), each.values(), each.min(), each.max()))
                .toList();
        List<UseLimit> uses = new ArrayList<>();
        wish.atMost()
                .ifPresent(most -> uses.add(new UseLimit(
                        "At most " + most + " ingredients",
                        IntStream.range(0, candidates.size()).boxed().collect(Collectors.toSet()),
                        most)));
        return new Problem(candidates, requirements, new Blend(ingredients, limits, uses), presentCost, present);
    }

    private static Ingredient ingredient(Candidate one, Shelf shelf, Wish wish, double presentCost) {
        Cost cost = cost(one, wish, presentCost);
        if (one.fixed()) {
            return new Ingredient(one.card().name(), one.now(), one.now(), true, cost);
        }
        if (wish.without().contains(one.key())) {
            return new Ingredient(one.card().name(), 0, 0, false, cost);
        }
        boolean rest = one.line()
                .map(line -> line.amount() instanceof Amount.ToHundred)
                .orElse(false);
        double onShelf = shelf.most(one.key());
        if (rest) {
            return new Ingredient(one.card().name(), 0, onShelf, false, cost);
        }
        // A line may stay where it is although that lies outside the usual range; the evaluation says so.
        double most = Math.min(onShelf, Math.max(one.now(), usage(one.card(), 1)));
        double least = Math.min(usage(one.card(), 0), one.now() > 0 ? one.now() : 1);
        return least > most
                ? new Ingredient(one.card().name(), 0, 0, false, cost)
                : new Ingredient(one.card().name(), least, most, false, cost);
    }

    private static double usage(Material card, int end) {
        return card.usage()
                .map(range -> end == 0 ? least(range) : range.high().massFraction())
                .orElse(end == 0 ? LEAST_DOSE : 1.0);
    }

    private static double least(PercentRange range) {
        return Math.max(LEAST_DOSE, range.low().massFraction());
    }

    private static Cost cost(Candidate one, Wish wish, double presentCost) {
        Goal goal = wish.goal();
        double money = presentCost > 0 ? goal.cost() * one.costPer100g().orElse(0) / presentCost : 0;
        double natural = goal.natural() * one.card().naturalOriginIndex().orElse(0.0);
        double used = wish.useUp().contains(one.key()) ? USE_UP : 0;
        return new Cost(money - natural - used, goal.count() * COUNT_SHARE, goal.change(), Math.min(1, one.now()));
    }

    /** The same, with one set of materials not used all together again. */
    Problem not(Set<Integer> together) {
        UseLimit no = new UseLimit("another answer", together, together.size() - 1);
        return new Problem(candidates, requirements, blend.and(no), presentCost, present);
    }
}
