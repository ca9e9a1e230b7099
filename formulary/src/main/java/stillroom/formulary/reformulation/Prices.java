package stillroom.formulary.reformulation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Limit;
import stillroom.science.blend.Mix;
import stillroom.science.blend.Patience;

/**
 * What the bands cost, in words: each one that binds is moved a little, and the best blend of the same materials is looked at again. So
 * each price is told in what the goal weighs, whichever goal that is.
 */
final class Prices {
    /** A band is moved by this part of the step that is spoken of, so that the same materials suffice. */
    private static final double PART = 0.05;

    /** Less is nothing to be told [per 100 g]. */
    private static final double SMALLEST_MONEY = 1e-4;

    private static final double SMALLEST_PERCENT = 5e-3;
    private static final double BINDS = 1e-9;
    private static final double NEAR = 1e-6;

    private final Problem problem;
    private final Wish wish;
    private final Blend same;

    private Prices(Problem problem, Mix mix) {
        this.problem = problem;
        this.wish = problem.wish();
        this.same = sameMaterials(problem, mix);
    }

    /** Where only the count matters, the price is what one ingredient fewer asks for. */
    static List<String> of(Problem problem, Mix mix, Patience patience) {
        Goal goal = problem.wish().goal();
        if (goal.weighs(Measure.COUNT)
                && !goal.weighs(Measure.COST)
                && !goal.weighs(Measure.NATURAL)
                && !goal.weighs(Measure.CHANGE)) {
            return problem.passed().isEmpty() ? OneFewer.of(problem, mix, patience) : List.of();
        }
        Prices prices = new Prices(problem, mix);
        Optional<Mix> here = BlendSolver.solve(prices.same, Patience.ENDLESS).mix();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < problem.requirements().size() && here.isPresent(); i++) {
            boolean isPriced = problem.requirements().get(i).kind() != Requirement.Kind.PART;
            if (isPriced && Math.abs(mix.prices().get(i)) > BINDS) {
                prices.price(i, here.get()).ifPresent(words::add);
            }
        }
        return words;
    }

    private static Blend sameMaterials(Problem problem, Mix mix) {
        Blend blend = problem.drawn();
        List<Ingredient> ingredients = new ArrayList<>();
        for (int j = 0; j < problem.candidates().size(); j++) {
            Ingredient one = blend.ingredients().get(j);
            ingredients.add(
                    mix.fractions().get(j) > 0
                            ? new Ingredient(one.name(), one.leastIfUsed(), one.most(), true, one.cost())
                            : new Ingredient(one.name(), 0, 0, false, one.cost()));
        }
        ingredients.addAll(blend.ingredients().subList(problem.candidates().size(), blend.size()));
        return blend.withIngredients(ingredients).withUseLimits(List.of());
    }

    private Optional<String> price(int i, Mix here) {
        Requirement requirement = problem.requirements().get(i);
        double step = step(requirement);
        boolean low = requirement.of(here.fractions()) - requirement.min() < NEAR * Math.max(1, requirement.min());
        for (int sign : new int[] {1, -1}) {
            Optional<Mix> there = moved(i, requirement.shifted(low, sign * PART * step));
            if (there.isPresent()) {
                String effects = effects(here.fractions(), there.get().fractions(), sign / PART);
                return effects.isEmpty() ? Optional.empty() : Optional.of(said(requirement, step) + effects + ".");
            }
        }
        return Optional.empty();
    }

    private Optional<Mix> moved(int i, Requirement requirement) {
        List<Limit> limits = new ArrayList<>(same.limits());
        limits.set(i, Problem.limit(requirement, same.beside()));
        return BlendSolver.solve(same.withLimits(limits), Patience.ENDLESS).mix();
    }

    private static double step(Requirement requirement) {
        return switch (requirement.unit()) {
            case "mmol per kg" -> 1;
            case "" -> requirement.mean().isPresent() ? 0.1 : 0.01;
            default -> 0.1;
        };
    }

    private String said(Requirement requirement, double step) {
        String unit = Wording.unit(requirement, problem.present().currency());
        String of = requirement.unit().isEmpty() ? " more in " : " more of ";
        return "Each " + BigDecimal.valueOf(step).stripTrailingZeros().toPlainString() + unit + of
                + Wording.lower(requirement.name()) + " ";
    }

    private String effects(List<Double> here, List<Double> there, double times) {
        List<String> effects = new ArrayList<>();
        Goal goal = wish.goal();
        if (goal.weighs(Measure.COST)) {
            String name = problem.present().currency();
            String currency = name.isEmpty() ? "" : " " + name;
            effect(
                    (cost(there) - cost(here)) * times,
                    SMALLEST_MONEY,
                    "costs %s" + currency + " per 100 g",
                    "saves %s" + currency + " per 100 g",
                    effects);
        }
        if (goal.weighs(Measure.NATURAL)) {
            effect(
                    (natural(there) - natural(here)) * times,
                    SMALLEST_PERCENT,
                    "gives %s %% of natural origin",
                    "takes %s %% of natural origin",
                    effects);
        }
        if (goal.weighs(Measure.CHANGE)) {
            effect(
                    (change(there) - change(here)) * times,
                    SMALLEST_PERCENT,
                    "adds %s %% to the changes",
                    "takes %s %% off the changes",
                    effects);
        }
        if (!wish.useUp().isEmpty()) {
            effect(
                    (used(there) - used(here)) * times,
                    SMALLEST_PERCENT,
                    "lets %s %% more be used up",
                    "lets %s %% less be used up",
                    effects);
        }
        return String.join(" and ", effects);
    }

    /** Two digits are said. */
    private static void effect(double by, double smallest, String more, String less, List<String> effects) {
        if (Math.abs(by) >= smallest) {
            String figure = new BigDecimal(Math.abs(by))
                    .round(new MathContext(2, RoundingMode.HALF_EVEN))
                    .toPlainString();
            effects.add(String.format(Locale.ROOT, by > 0 ? more : less, figure));
        }
    }

    private double cost(List<Double> fractions) {
        return sum(j ->
                fractions.get(j) * problem.candidates().get(j).costPer100g().orElse(0));
    }

    private double natural(List<Double> fractions) {
        return sum(j -> 100
                * fractions.get(j)
                * problem.candidates().get(j).card().naturalOriginIndex().orElse(0.0));
    }

    private double change(List<Double> fractions) {
        return sum(j ->
                100 * Math.abs(fractions.get(j) - problem.candidates().get(j).now()));
    }

    private double used(List<Double> fractions) {
        return sum(j -> wish.useUp().contains(problem.candidates().get(j).key()) ? 100 * fractions.get(j) : 0);
    }

    private double sum(java.util.function.IntToDoubleFunction each) {
        return IntStream.range(0, problem.candidates().size()).mapToDouble(each).sum();
    }
}
