package stillroom.formulary.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/**
 * A formula line whose amount is a figure.
 *
 * @param percent its share: stated, expected, or what is missing to 100
 * @param toHundred whether it fills up to 100
 * @param reading range of a line that is added up to a reading
 */
record ResolvedLine(Phase phase, Line line, Percent percent, boolean toHundred, Optional<PercentRange> reading) {
    String id() {
        return line.id();
    }

    String materialKey() {
        return line.materialKey();
    }

    /**
     * All lines that are more than 0 %, in working order, and those up to a reading of which nobody has stated how much is
     * expected: they are poured all the same. The formula must have passed {@link PlanProblems}.
     */
    static List<ResolvedLine> of(Formula formula) {
        Percent missing = Percent.HUNDRED.minus(new Percent(FormulaSum.withoutToHundred(formula)));
        List<ResolvedLine> resolved = new ArrayList<>();
        for (Phase phase : formula.phases()) {
            for (Line line : phase.lines()) {
                ResolvedLine one = of(phase, line, missing);
                if (!one.percent.isZero() || one.reading().isPresent()) {
                    resolved.add(one);
                }
            }
        }
        return List.copyOf(resolved);
    }

    private static ResolvedLine of(Phase phase, Line line, Percent missing) {
        Amount amount = line.amount();
        return amount.match(
                fixed -> new ResolvedLine(phase, line, fixed.percent(), false, Optional.empty()),
                () -> new ResolvedLine(phase, line, missing, true, Optional.empty()),
                reading -> new ResolvedLine(phase, line, reading.expected(), false, Optional.of(reading.range())));
    }
}
