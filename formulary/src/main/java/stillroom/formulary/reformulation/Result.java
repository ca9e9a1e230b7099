package stillroom.formulary.reformulation;

import java.util.List;
import stillroom.formulary.material.Material;

/**
 * What came of a wish.
 *
 * @param answers best first; none where it is impossible or time was too short
 * @param conflict requirements that cannot all be kept, in words; empty where answers exist
 * @param reliefs least relaxations that would make it possible
 * @param bought where the shelf has no answer: materials of the library any one of which would give one, least change first
 * @param nearest cards that might and that there was no time to judge, nearest first
 * @param refused blends that the evaluation refused, with the law that they would break
 * @param more blends that were not looked at remain within the bands
 * @param stopped time was over before the last answer was proven
 */
public record Result(
        List<Answer> answers,
        List<String> conflict,
        List<Relief> reliefs,
        List<Bought> bought,
        List<Material> nearest,
        List<String> refused,
        boolean more,
        boolean stopped) {
    public Result {
        answers = List.copyOf(answers);
        conflict = List.copyOf(conflict);
        refused = List.copyOf(refused);
        reliefs = List.copyOf(reliefs);
        bought = List.copyOf(bought);
        nearest = List.copyOf(nearest);
    }

    /** With nothing to be bought. */
    public Result(
            List<Answer> answers,
            List<String> conflict,
            List<Relief> reliefs,
            List<String> refused,
            boolean more,
            boolean stopped) {
        this(answers, conflict, reliefs, List.of(), List.of(), refused, more, stopped);
    }

    Result with(Buying.Found found) {
        return new Result(
                answers,
                conflict,
                reliefs,
                found.works(),
                found.unjudged(),
                refused,
                more,
                stopped || !found.unjudged().isEmpty());
    }
}
