package stillroom.science.blend;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Explains why no blend keeps all its limits. Stateless. */
public final class WhyNot {
    private WhyNot() {}

    /**
     * @param blend proven to be impossible
     * @param patience for each of the questions that are asked on the way
     */
    public static Explanation explain(Blend blend, Patience patience) {
        return explain(blend, patience, requirement -> true);
    }

    /** @param movable what may be relaxed at all; the rest of the conflict is named all the same */
    public static Explanation explain(Blend blend, Patience patience, Predicate<Requirement> movable) {
        ConflictSearch search = new ConflictSearch(blend, patience);
        List<Requirement> conflict = search.conflict();
        Reliefs reliefs = new Reliefs(blend, patience);
        List<Explanation.Relief> alone = conflict.stream()
                .filter(movable)
                .map(reliefs::alone)
                .flatMap(Optional::stream)
                .toList();
        List<Requirement> limits =
                Reliefs.limits(blend).stream().filter(movable).toList();
        List<Explanation.Relief> together = limits.isEmpty() ? List.of() : reliefs.passing(limits);
        return new Explanation(conflict, search.certain(), alone, together);
    }
}
