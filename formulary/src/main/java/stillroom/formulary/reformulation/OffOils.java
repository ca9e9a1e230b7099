package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.reformulation.Requirement.Kind;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.Cost;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Patience;
import stillroom.science.blend.WhyNot;

/** Says that no formula has an HLB near enough to what its oils require, and how much farther it must be allowed to be. */
final class OffOils {
    private static final double HUNDREDTHS = 100;
    /** Parts of the range of the required HLB that are explained. */
    private static final int MOST_EXPLAINED = 4;

    private final Problem problem;
    private final Patience patience;

    OffOils(Problem problem, Patience patience) {
        this.problem = problem;
        this.patience = patience;
    }

    /** The distance, and what else must give way in one part of the range or another. */
    List<String> conflict(List<Problem> parts) {
        List<String> words = new ArrayList<>();
        words.add("HLB of the emulsifiers at most " + Wording.figure(AgainstOils.room(problem), 2)
                + " off what the oils require");
        for (Problem part : parts.subList(0, Math.min(MOST_EXPLAINED, parts.size()))) {
            WordsOfConflict its = new WordsOfConflict(part);
            Explanation why = WhyNot.explain(part.blend(), patience, each -> false);
            List<stillroom.science.blend.Requirement> whole = why.conflict().stream()
                    .filter(each -> !isOfAPart(part, each))
                    .toList();
            words.addAll(its.conflict(new Explanation(whole, why.smallest(), List.of(), List.of())));
        }
        return words.stream().distinct().toList();
    }

    private static boolean isOfAPart(Problem part, stillroom.science.blend.Requirement each) {
        return switch (each.kind()) {
            case LIMIT_MIN, LIMIT_MAX -> part.requirements().get(each.of()).kind() == Kind.PART;
            case USE_LIMIT, LEAST_DOSE, PRESENCE, MOST -> false;
        };
    }

    /** Where only the distance is in the way. */
    Optional<Relief> relief() {
        return least().map(off ->
                new Relief("Allow an HLB up to " + Wording.figure(off, 2) + " off what the oils require.", wish(off)));
    }

    /** A way out that leads to an HLB too far off allows that too. */
    Relief and(Relief relief) {
        return least().map(off -> new Relief(
                        relief.words().substring(0, relief.words().length() - 1) + ", and an HLB up to "
                                + Wording.figure(off, 2) + " off what the oils require.",
                        wish(off)))
                .orElse(relief);
    }

    private Wish wish(double off) {
        return problem.wish().with(problem.wish().bands().withOwn(Requirements.AGAINST, off));
    }

    /** Halved until it is known well enough, then rounded up; empty where it is near enough, or nothing suffices. */
    private Optional<Double> least() {
        double too = AgainstOils.room(problem);
        if (!AgainstOils.applies(problem) || solve(too).mix().isPresent()) {
            return Optional.empty();
        }
        BlendAnswer anyhow = solve(Double.MAX_VALUE);
        if (anyhow.mix().isEmpty()) {
            return Optional.empty();
        }
        double enough = AgainstOils.off(problem, anyhow.mix().get().fractions());
        while (enough - too > AgainstOils.WITHIN) {
            double middle = (too + enough) / 2;
            Optional<List<Double>> found = solve(middle).mix().map(mix -> mix.fractions());
            enough = found.isPresent() ? middle : enough;
            too = found.isPresent() ? too : middle;
        }
        return Optional.of(Math.ceil(enough * HUNDREDTHS) / HUNDREDTHS);
    }

    private BlendAnswer solve(double room) {
        return AgainstOils.solve(problem, room, patience, OffOils::free).answer();
    }

    /** That there is one is enough. */
    private static Blend free(Problem problem) {
        List<Ingredient> ingredients = problem.blend().ingredients().stream()
                .map(one -> new Ingredient(one.name(), one.leastIfUsed(), one.most(), one.required(), Cost.NONE))
                .toList();
        return problem.blend().withIngredients(ingredients);
    }
}
