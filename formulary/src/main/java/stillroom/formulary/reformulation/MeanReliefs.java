package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Cost;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Limit;
import stillroom.science.blend.Patience;
import stillroom.science.blend.Requirement.Kind;

/** How far the bound of a mean (an HLB) must move so that a formula exists: halved until it is known well enough, as it is no sum. */
final class MeanReliefs {
    private static final double MOST = 20;
    private static final double WITHIN = 0.005;

    private final Problem problem;
    private final Patience patience;

    MeanReliefs(Problem problem, Patience patience) {
        this.problem = problem;
        this.patience = patience;
    }

    List<Relief> of(Explanation why) {
        return why.conflict().stream()
                .filter(each -> each.kind() == Kind.LIMIT_MIN)
                .filter(each -> problem.requirements().get(each.of()).mean().isPresent())
                .flatMap(each -> relief(each.of()).stream())
                .toList();
    }

    private Optional<Relief> relief(int i) {
        Requirement requirement = problem.requirements().get(i);
        double down = requirement.mean().orElseThrow().isLeast() ? -1 : 1;
        double too = 0;
        double enough = MOST;
        if (!exists(i, requirement.shifted(true, down * enough))) {
            return Optional.empty();
        }
        while (enough - too > WITHIN) {
            double middle = (too + enough) / 2;
            boolean suffices = exists(i, requirement.shifted(true, down * middle));
            enough = suffices ? middle : enough;
            too = suffices ? too : middle;
        }
        double bound = requirement.mean().orElseThrow().bound() + down * enough;
        String words =
                Wording.lower(requirement.name()) + (down < 0 ? " at least " : " at most ") + Wording.figure(bound, 2);
        return requirement
                .band()
                .map(band -> new Relief("Allow " + words + ".", band.widened().to(problem.wish(), bound)));
    }

    private boolean exists(int i, Requirement other) {
        Blend blend = problem.blend();
        List<Limit> limits = new ArrayList<>(blend.limits());
        limits.set(i, new Limit(other.name(), other.values(), other.min(), other.max()));
        List<Ingredient> free = blend.ingredients().stream()
                .map(one -> new Ingredient(one.name(), one.leastIfUsed(), one.most(), one.required(), Cost.NONE))
                .toList();
        return BlendSolver.solve(blend.withIngredients(free).withLimits(limits), patience)
                .mix()
                .isPresent();
    }
}
