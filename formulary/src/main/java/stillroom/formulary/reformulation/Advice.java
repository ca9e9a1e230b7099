package stillroom.formulary.reformulation;

import java.util.Comparator;
import java.util.Optional;
import stillroom.formulary.material.Family;

/**
 * Whether a way out is advice: it brings back nothing that is gone, and does not take away what the product lives by, its largest
 * class of active matter (or shelf, where it has no surfactant), or its preservative.
 */
final class Advice {
    /** Half of what there is, or half as much again, is another product; common practice, no source [%]. */
    private static final double ANOTHER_PRODUCT = 50;

    private final Problem problem;
    private final Optional<String> backbone;

    Advice(Problem problem) {
        this.problem = problem;
        this.backbone = largest(" active matter").or(() -> largest(" shelf"));
    }

    private Optional<String> largest(String kind) {
        return problem.requirements().stream()
                .filter(each -> each.name().endsWith(kind) && at(each) > 0)
                .max(Comparator.comparingDouble(Advice::at))
                .map(Requirement::name);
    }

    private static double at(Requirement requirement) {
        return requirement.band().map(Band::at).orElse(0.0);
    }

    boolean isSound(Relief way) {
        boolean staysGone = way.wish().without().containsAll(problem.wish().without());
        return staysGone
                && backbone.map(name -> isNear(name, way)).orElse(true)
                && problem.candidates().stream()
                        .filter(one -> one.card().family() == Family.PRESERVATIVE)
                        .allMatch(one -> isNear(FigureNames.dose(one.card().name()), way));
    }

    private boolean isNear(String figure, Relief way) {
        double was = problem.wish().bands().own().getOrDefault(figure, 0.0);
        return way.wish().bands().own().getOrDefault(figure, 0.0) <= Math.max(was, ANOTHER_PRODUCT);
    }
}
