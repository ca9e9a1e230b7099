package stillroom.formulary.reformulation;

import java.util.List;

/**
 * What came of a wish.
 *
 * @param answers best first; none where it is impossible or time was too short
 * @param conflict requirements that cannot all be kept, in words; empty where answers exist
 * @param reliefs least relaxations that would make it possible
 * @param refused blends that the evaluation refused, with the law that they would break
 * @param more blends that were not looked at remain within the bands
 * @param stopped time was over before the last answer was proven
 */
public record Result(
        List<Answer> answers,
        List<String> conflict,
        List<Relief> reliefs,
        List<String> refused,
        boolean more,
        boolean stopped) {
    public Result {
        answers = List.copyOf(answers);
        conflict = List.copyOf(conflict);
        refused = List.copyOf(refused);
        reliefs = List.copyOf(reliefs);
    }
}
