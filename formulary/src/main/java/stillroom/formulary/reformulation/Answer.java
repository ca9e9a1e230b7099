package stillroom.formulary.reformulation;

import java.util.List;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Formula;

/**
 * One new formula, judged by the evaluation of the formula page.
 *
 * @param objective what was made least
 * @param proven nothing better lies within the bands
 * @param changes one per material that is in either formula, largest change first
 * @param figures what the evaluation says of both
 * @param givesUp what is worse than before, in words
 * @param arisen findings that the present formula does not have
 * @param disagreements where the search and the evaluation differ; always empty, else one of them is wrong
 * @param prices what the bands cost, in words; only for the goal of a low cost
 */
public record Answer(
        Formula formula,
        Evaluation evaluation,
        double objective,
        boolean proven,
        List<Change> changes,
        List<Compared> figures,
        List<String> givesUp,
        List<Finding> arisen,
        List<String> disagreements,
        List<String> prices) {
    public Answer {
        changes = List.copyOf(changes);
        figures = List.copyOf(figures);
        givesUp = List.copyOf(givesUp);
        arisen = List.copyOf(arisen);
        disagreements = List.copyOf(disagreements);
        prices = List.copyOf(prices);
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
