package stillroom.formulary.reformulation;

import java.util.List;
import java.util.Set;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Formula;

/**
 * One new formula, judged by the evaluation of the formula page.
 *
 * @param objective what was made least
 * @param proven nothing better lies within the bands, but for what was passed over
 * @param passedOver what was left aside for it, as it stands before or is refused: materials used together
 * @param changes one per material that is in either formula, largest change first
 * @param figures what the evaluation says of both
 * @param givesUp what is worse than before or has moved within its band, in words
 * @param harshness whether it is harsher or milder, and by which figure; empty where that is no question
 * @param enoughFor grams of product for which the shelf suffices; infinite where it always does
 * @param arisen findings that the present formula does not have
 * @param grave of these, what has nothing like it in the present formula
 * @param disagreements where the search and the evaluation differ; always empty, else one of them is wrong
 * @param prices what the bands cost with the same materials, in words and in what the goal weighs
 * @param origin natural origin, with what is not known of it
 */
public record Answer(
        Formula formula,
        Evaluation evaluation,
        double objective,
        boolean proven,
        List<String> passedOver,
        List<Change> changes,
        List<Compared> figures,
        List<String> givesUp,
        String harshness,
        List<Finding> arisen,
        List<Finding> grave,
        List<String> disagreements,
        List<String> prices,
        double enoughFor,
        Origin originBefore,
        Origin origin) {
    /** What the evaluation may say anew and yet is no fault of the law: it does not keep, it crystallises, or its pH is not the one asked for. */
    private static final Set<String> SERIOUS = Set.of(
            "preservation.missing",
            "preservation.gap",
            "preservation.ph",
            "ph.band",
            "solubility.free-acid",
            "emulsion.hlb");

    public Answer {
        passedOver = List.copyOf(passedOver);
        changes = List.copyOf(changes);
        figures = List.copyOf(figures);
        givesUp = List.copyOf(givesUp);
        arisen = List.copyOf(arisen);
        grave = List.copyOf(grave);
        disagreements = List.copyOf(disagreements);
        prices = List.copyOf(prices);
    }

    /** Findings for which it is refused. */
    List<Finding> breaches() {
        return arisen.stream()
                .filter(finding -> finding.kind() == Finding.Kind.BREACH)
                .toList();
    }

    /** New findings for which it stands behind answers that do not have them. */
    public List<Finding> reproaches() {
        return grave.stream()
                .filter(finding -> finding.kind() == Finding.Kind.PROBABLE_FAULT
                        || finding.kind() == Finding.Kind.LOOK_AT_THIS && SERIOUS.contains(finding.rule()))
                .toList();
    }

    boolean isNoBetterThanBefore(Measure measure) {
        return switch (measure) {
            case COST -> isNoCheaper();
            case NATURAL -> origin.guaranteed() <= originBefore.guaranteed();
            case COUNT -> {
                long before =
                        changes.stream().filter(change -> change.before() > 0).count();
                yield changes.stream().filter(change -> change.after() > 0).count() >= before;
            }
            case CHANGE -> false;
        };
    }

    private boolean isNoCheaper() {
        return figures.stream()
                .filter(figure -> figure.name().equals(Requirements.COST))
                .anyMatch(figure -> figure.after() >= figure.before());
    }

    boolean isSetBehind() {
        return !reproaches().isEmpty();
    }

    /** How much of a material there was and is [%]. */
    public record Change(String materialKey, String name, double before, double after) {
        public double by() {
            return after - before;
        }
    }

    /** A figure of the evaluation before and after. */
    public record Compared(String name, String unit, double before, double after) {}
}
