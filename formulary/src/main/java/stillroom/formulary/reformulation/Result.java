package stillroom.formulary.reformulation;

import java.util.List;

/**
 * What came of a wish.
 *
 * @param answers best first; none where it is impossible or time was too short
 * @param conflict requirements that cannot all be kept, in words; empty where answers exist
 * @param reliefs what would make it possible, in words
 * @param stopped time was over before the last answer was proven
 */
public record Result(List<Answer> answers, List<String> conflict, List<String> reliefs, boolean stopped) {
    public Result {
        answers = List.copyOf(answers);
        conflict = List.copyOf(conflict);
        reliefs = List.copyOf(reliefs);
    }
}
