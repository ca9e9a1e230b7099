package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.quantity.Percent;

/** Why a formula and a batch size cannot be turned into grams as they stand. */
public final class PlanProblems {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private static final Percent MOST_LOSS = Percent.of("50");

    private PlanProblems() {}

    /** Everything that stands in the way, empty where a plan can be made. */
    public static List<Problem> of(Formula formula, BatchSize size) {
        List<Problem> problems = new ArrayList<>(ofFormula(formula));
        problems.addAll(size instanceof BatchSize.FromContainers from ? ofContainers(from) : ofStated(size));
        return List.copyOf(problems);
    }

    private static List<Problem> ofFormula(Formula formula) {
        BigDecimal sum = FormulaSum.withoutToHundred(formula);
        String shown = sum.stripTrailingZeros().toPlainString();
        long toHundred = FormulaSum.toHundredLines(formula);
        if (toHundred > 1) {
            return formulaProblem("Two lines are q.s. to 100; only one can take what is missing.");
        }
        if (toHundred == 1 && sum.compareTo(HUNDRED) > 0) {
            return formulaProblem(
                    "The lines add up to " + shown + " % before q.s.; nothing is left for the q.s. line.");
        }
        if (toHundred == 0 && sum.compareTo(HUNDRED) != 0) {
            return formulaProblem("The lines add up to " + shown + " %, not 100 %, and no line is q.s. to 100.");
        }
        return List.of();
    }

    private static List<Problem> formulaProblem(String sentence) {
        return List.of(new Problem("formula", sentence));
    }

    private static List<Problem> ofStated(BatchSize size) {
        return ((BatchSize.Stated) size).mass().signum() > 0
                ? List.of()
                : List.of(new Problem("mass", "The batch needs a mass above 0 g."));
    }

    private static List<Problem> ofContainers(BatchSize.FromContainers from) {
        List<Problem> problems = new ArrayList<>();
        if (from.containers() < 1) {
            problems.add(new Problem("containers", "At least one container is to be filled."));
        }
        if (from.fillEach().signum() <= 0) {
            problems.add(new Problem("fillEach", "A container takes more than 0 g."));
        }
        if (from.setAside().signum() < 0) {
            problems.add(new Problem("setAside", "What is set aside cannot be less than 0 g."));
        }
        if (from.loss().compareTo(MOST_LOSS) > 0) {
            problems.add(new Problem("loss", "More than half of the batch would be lost; give the loss in percent."));
        }
        return problems;
    }
}
