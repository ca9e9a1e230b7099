package stillroom.formulary.reformulation;

import java.util.List;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Formula;

/**
 * One new formula, judged by the evaluation of the formula page.
 *
 * @param objective what was made least
 * @param proven nothing better lies within the bands, but for what was passed over
 * @param passedOver better blends that the evaluation refuses, with the law that they would break
 * @param changes one per material that is in either formula, largest change first
 * @param figures what the evaluation says of both
 * @param givesUp what is worse than before, in words
 * @param arisen findings that the present formula does not have
 * @param disagreements where the search and the evaluation differ; always empty, else one of them is wrong
 * @param prices what the bands cost with the same materials, in words and in what the goal weighs
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
        List<Finding> arisen,
        List<String> disagreements,
        List<String> prices) {
    public Answer {
        passedOver = List.copyOf(passedOver);
        changes = List.copyOf(changes);
        figures = List.copyOf(figures);
        givesUp = List.copyOf(givesUp);
        arisen = List.copyOf(arisen);
        disagreements = List.copyOf(disagreements);
        prices = List.copyOf(prices);
    }

    /** Findings for which it is refused. */
    List<Finding> breaches() {
        return arisen.stream()
                .filter(finding -> finding.kind() == Finding.Kind.BREACH)
                .toList();
    }

    Answer after(List<String> refused) {
        return new Answer(
                formula,
                evaluation,
                objective,
                proven,
                refused,
                changes,
                figures,
                givesUp,
                arisen,
                disagreements,
                prices);
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
