package stillroom.formulary.plan;

import java.math.BigDecimal;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;

/** Sums over the lines of a formula, which in a draft may be anything. */
final class FormulaSum {
    private FormulaSum() {}

    /** Stated and expected percentages together, without the line that fills up to 100 [%]. */
    static BigDecimal withoutToHundred(Formula formula) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Line line : formula.lines()) {
            sum = sum.add(line.amount()
                    .match(
                            fixed -> fixed.percent().value(),
                            () -> BigDecimal.ZERO,
                            reading -> reading.expected().value()));
        }
        return sum;
    }

    static long toHundredLines(Formula formula) {
        return formula.lines().stream()
                .filter(line -> line.amount() instanceof Amount.ToHundred)
                .count();
    }
}
