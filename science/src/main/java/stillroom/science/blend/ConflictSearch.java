package stillroom.science.blend;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds requirements that cannot all be kept, none of them to spare: goes through all and drops each without which there is
 * still no blend (deletion filter), whole halves at a time while that succeeds.
 *
 * <p>Source: chinneck-2008, chapter 6.
 */
final class ConflictSearch {
    private final Blend blend;
    private final Patience patience;
    private final Set<Requirement> kept;
    private boolean certain = true;

    ConflictSearch(Blend blend, Patience patience) {
        this.blend = blend;
        this.patience = patience;
        this.kept = new LinkedHashSet<>(Relaxed.requirements(blend));
    }

    List<Requirement> conflict() {
        for (Requirement.Kind kind : Requirement.Kind.values()) {
            drop(kept.stream().filter(each -> each.kind() == kind).toList());
        }
        return List.copyOf(kept);
    }

    /** Whether each test was answered in time, so that nothing in the conflict can be spared. */
    boolean certain() {
        return certain;
    }

    private void drop(List<Requirement> some) {
        if (some.isEmpty()) {
            return;
        }
        Set<Requirement> without = new LinkedHashSet<>(kept);
        some.forEach(without::remove);
        if (impossible(without)) {
            some.forEach(kept::remove);
        } else if (some.size() > 1) {
            drop(new ArrayList<>(some.subList(0, some.size() / 2)));
            drop(new ArrayList<>(some.subList(some.size() / 2, some.size())));
        }
    }

    private boolean impossible(Set<Requirement> asked) {
        return BlendSolver.solve(Relaxed.keeping(blend, asked), patience)
                .match(optimal -> false, this::unanswered, infeasible -> true);
    }

    private boolean unanswered(BlendAnswer.Stopped stopped) {
        certain &= stopped.best().isPresent();
        return false;
    }
}
