package stillroom.science.blend;

import java.util.List;

/**
 * Why a blend is impossible, and what would make it possible.
 *
 * @param conflict requirements that cannot all be kept, though nothing else were asked than fractions that add up to 1
 * @param smallest proven: without any one of the conflict the others could be kept. False where patience was over before.
 * @param alone reliefs of one requirement, each of which suffices while all others stand
 * @param together reliefs of limits that suffice together, with the least sum of changes relative to the limits' size; empty
 *     where no change of limits suffices
 */
public record Explanation(List<Requirement> conflict, boolean smallest, List<Relief> alone, List<Relief> together) {
    public Explanation {
        conflict = List.copyOf(conflict);
        alone = List.copyOf(alone);
        together = List.copyOf(together);
    }

    /** @param to the nearest value of the requirement's bound with which a blend exists */
    public record Relief(Requirement requirement, double to) {}
}
