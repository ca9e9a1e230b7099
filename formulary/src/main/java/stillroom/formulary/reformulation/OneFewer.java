package stillroom.formulary.reformulation;

import java.util.List;
import java.util.OptionalInt;
import stillroom.science.blend.Blend;
import stillroom.science.blend.Mix;
import stillroom.science.blend.Patience;
import stillroom.science.blend.UseLimit;
import stillroom.science.blend.WhyNot;

/** What a formula of one ingredient fewer would ask of the bands: the price of an ingredient, as ingredients come whole. */
final class OneFewer {
    private OneFewer() {}

    /** Each of these suffices; none where no band of the maker's is in the way, or there was no time to tell. */
    static List<String> of(Problem problem, Mix mix, Patience patience) {
        int used = (int) mix.fractions().subList(0, problem.candidates().size()).stream()
                .filter(fraction -> fraction > 0)
                .count();
        Problem tighter = fewer(problem, used - 1);
        WordsOfConflict words = new WordsOfConflict(tighter);
        int count = tighter.blend().useLimits().size() - 1;
        var why = WhyNot.explain(tighter.blend(), patience, each -> words.isABand(each) && !isCount(each, count));
        return words.reliefs(why).stream()
                .map(relief -> "One ingredient fewer: " + Wording.lower(relief.words()))
                .toList();
    }

    private static boolean isCount(stillroom.science.blend.Requirement each, int count) {
        return each.kind() == stillroom.science.blend.Requirement.Kind.USE_LIMIT && each.of() == count;
    }

    private static Problem fewer(Problem problem, int most) {
        Blend blend = problem.blend().and(new UseLimit("At most " + most + " ingredients", problem.everyOne(), most));
        return new Problem(
                problem.wish().atMost(OptionalInt.empty()),
                problem.shelf(),
                problem.candidates(),
                problem.requirements(),
                blend,
                problem.presentCost(),
                problem.present(),
                problem.passed());
    }
}
