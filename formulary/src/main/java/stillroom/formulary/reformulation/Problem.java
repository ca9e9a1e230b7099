package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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

/**
 * A wish as a blending problem: candidates are its ingredients, requirements its limits, in the same order.
 *
 * @param blend what is asked for, and nothing of what is best
 * @param passed what is left aside from now on, in words
 */
record Problem(
        Wish wish,
        Shelf shelf,
        List<Candidate> candidates,
        List<Requirement> requirements,
        Blend blend,
        double presentCost,
        Present present,
        List<String> passed) {
    /** Least dose of a newcomer whose card states no range of use. */
    private static final double LEAST_DOSE = 0.001;
    /** What using up is worth against all else. */
    private static final double USE_UP = 10;

    /** What counts how far a figure is off reaches beyond its band, so that the band alone has a price. */
    private static final double FURTHEST = 2;

    private static final double COUNT_SHARE = 0.05;
    /** One newcomer rather than two that together come nearer to the middle of a band. */
    private static final double NEWCOMER = 0.01;

    static Problem of(Recast recast, Shelf shelf, Wish wish) {
        Present present = Present.of(recast);
        List<Candidate> candidates = Candidates.of(recast, present, shelf, wish);
        List<Requirement> requirements = Requirements.of(recast, present, wish, candidates);
        double presentCost = candidates.stream()
                .mapToDouble(one -> one.now() * one.costPer100g().orElse(0))
                .sum();
        List<Ingredient> ingredients = candidates.stream()
                .map(one -> ingredient(one, shelf, wish, presentCost))
                .toList();
        List<Limit> limits = requirements.stream()
                .map(each -> new Limit(each.name(), each.values(), each.min(), each.max()))
                .toList();
        Blend blend = new Blend(ingredients, limits, uses(wish, candidates));
        return new Problem(wish, shelf, candidates, requirements, blend, presentCost, present, List.of());
    }

    private static List<UseLimit> uses(Wish wish, List<Candidate> candidates) {
        List<UseLimit> uses = new ArrayList<>();
        wish.atMost()
                .ifPresent(
                        most -> uses.add(new UseLimit("At most " + most + " ingredients", everyOne(candidates), most)));
        candidates.stream()
                .flatMap(one -> one.inPlace().stream())
                .map(InPlace::of)
                .distinct()
                .forEach(gone -> {
                    Set<Integer> standIns = IntStream.range(0, candidates.size())
                            .filter(j ->
                                    candidates.get(j).inPlace().map(InPlace::of).equals(Optional.of(gone)))
                            .boxed()
                            .collect(Collectors.toSet());
                    uses.add(new UseLimit("One material in place of " + gone, standIns, 1));
                });
        candidates.stream()
                .filter(Candidate::isNewcomer)
                .map(Candidate::key)
                .distinct()
                .forEach(key -> {
                    Set<Integer> places = copies(candidates, key);
                    if (places.size() > 1) {
                        String name =
                                candidates.get(places.iterator().next()).card().name();
                        uses.add(new UseLimit(name + " in place of one material only", places, 1));
                    }
                });
        return uses;
    }

    /** A newcomer stands among the candidates once for each line that it may stand in for. */
    private static Set<Integer> copies(List<Candidate> candidates, String key) {
        return IntStream.range(0, candidates.size())
                .filter(j -> candidates.get(j).isNewcomer()
                        && candidates.get(j).key().equals(key))
                .boxed()
                .collect(Collectors.toSet());
    }

    Set<Integer> everyOne() {
        return everyOne(candidates);
    }

    private static Set<Integer> everyOne(List<Candidate> candidates) {
        return IntStream.range(0, candidates.size()).boxed().collect(Collectors.toSet());
    }

    /** The blend with what draws figures to the middle of their bands: how far each is off stands beside the mix. */
    Blend drawn() {
        double weight = wish.goal().figures();
        List<Integer> pulled = IntStream.range(0, requirements.size())
                .filter(i -> requirements.get(i).band().map(Problem::pulls).orElse(false))
                .boxed()
                .toList();
        if (weight <= Goal.TIE || pulled.isEmpty()) {
            return blend;
        }
        int beside = 2 * pulled.size();
        List<Ingredient> ingredients = new ArrayList<>(blend.ingredients());
        List<Limit> limits = new ArrayList<>();
        blend.limits().forEach(limit -> limits.add(wider(limit, beside, -1, 0)));
        for (int k = 0; k < pulled.size(); k++) {
            Requirement requirement = requirements.get(pulled.get(k));
            Band band = requirement.band().orElseThrow();
            Cost cost = Cost.perFraction(FURTHEST * weight * band.pull());
            ingredients.add(new Ingredient(requirement.name() + ", above", 0, 1, false, cost));
            ingredients.add(new Ingredient(requirement.name() + ", below", 0, 1, false, cost));
            limits.add(middle(requirement, band, beside, 2 * k));
        }
        return new Blend(ingredients, limits, blend.useLimits(), beside);
    }

    /** What a mean is off is told by the sum of (figure - middle) times mass. */
    private Limit middle(Requirement requirement, Band band, int beside, int above) {
        String name = requirement.name() + ", middle";
        if (requirement.mean().isEmpty()) {
            return wider(
                    new Limit(name, requirement.values(), band.at(), band.at()), beside, above, FURTHEST * band.room());
        }
        Requirement.Mean mean = requirement.mean().get();
        List<Double> values = new ArrayList<>();
        double mass = 0;
        for (int j = 0; j < candidates.size(); j++) {
            values.add(mean.sums().get(j) - band.at() * mean.masses().get(j));
            mass += candidates.get(j).now() * mean.masses().get(j);
        }
        return wider(new Limit(name, values, 0, 0), beside, above, FURTHEST * band.room() * mass);
    }

    /** A requirement among those of the drawn blend. */
    static Limit limit(Requirement requirement, int beside) {
        Limit bare = new Limit(requirement.name(), requirement.values(), requirement.min(), requirement.max());
        return wider(bare, beside, -1, 0);
    }

    private static boolean pulls(Band band) {
        return band.pull() > 0 && band.room() > 0;
    }

    private static Limit wider(Limit limit, int beside, int above, double room) {
        List<Double> values = new ArrayList<>(limit.values());
        for (int k = 0; k < beside; k++) {
            values.add(k == above ? -room : k == above + 1 && above >= 0 ? room : 0.0);
        }
        return new Limit(limit.name(), values, limit.min(), limit.max());
    }

    private static Ingredient ingredient(Candidate one, Shelf shelf, Wish wish, double presentCost) {
        Cost cost = cost(one, wish, presentCost);
        if (one.fixed()) {
            return new Ingredient(one.card().name(), one.now(), one.now(), true, cost);
        }
        Wish.Allowed allowed = wish.allowed().get(one.key());
        if (allowed != null) {
            boolean stays = !one.isNewcomer() && !Candidates.isFree(one.card().family());
            return new Ingredient(one.card().name(), allowed.low(), allowed.high(), stays, cost);
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
        double count = goal.count() * COUNT_SHARE + (one.isNewcomer() ? goal.figures() * NEWCOMER : 0);
        return new Cost(money - natural - used, count, goal.change(), Math.min(1, one.now()));
    }

    Problem with(List<Requirement> others, Blend itsBlend) {
        return new Problem(wish, shelf, candidates, others, itsBlend, presentCost, present, passed);
    }

    /** The same, with one set of materials not used all together again. */
    Problem not(Set<Integer> together) {
        // In whichever place: of the copies of a newcomer no more than one is used at a time.
        Set<Integer> all = new HashSet<>(together);
        together.forEach(j -> all.addAll(copies(candidates, candidates.get(j).key())));
        UseLimit no = new UseLimit("another answer", all, together.size() - 1);
        boolean same = together.stream().noneMatch(j -> candidates.get(j).isNewcomer());
        String words = same
                ? "the same materials"
                : together.stream()
                        .sorted()
                        .map(j -> candidates.get(j).card().name())
                        .collect(Collectors.joining(" and "));
        List<String> more = new ArrayList<>(passed);
        more.add(words);
        return new Problem(wish, shelf, candidates, requirements, blend.and(no), presentCost, present, more);
    }
}
