package stillroom.formulary.dosing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/**
 * Acid or base that a formula reserves for the pH: a line up to a reading, which the q.s. line makes room for.
 *
 * @param materialKey the corrector
 * @param expected usual amount [%]
 * @param range smallest and largest that is to be reckoned with; limits are judged at its upper end [%]
 * @param note why it is there
 */
public record ReservedCorrection(String materialKey, Percent expected, PercentRange range, String note) {
    private static final int DECIMALS = 3;

    /** From figures in percent, rounded outwards to a thousandth of a percent and within 0 to 100. */
    public static ReservedCorrection of(String materialKey, double low, double expected, double high, String note) {
        BigDecimal middle = rounded(expected, RoundingMode.HALF_EVEN);
        BigDecimal least = rounded(low, RoundingMode.FLOOR).min(middle);
        BigDecimal most = rounded(high, RoundingMode.CEILING).max(middle);
        return new ReservedCorrection(
                materialKey, new Percent(middle), new PercentRange(new Percent(least), new Percent(most)), note);
    }

    private static BigDecimal rounded(double percent, RoundingMode mode) {
        return BigDecimal.valueOf(Math.max(0, Math.min(100, percent))).setScale(DECIMALS, mode);
    }

    /** What speaks against entering it into a formula. */
    public List<Problem> problems(Formula formula) {
        List<Problem> problems = new ArrayList<>();
        Optional<Line> rest = formula.lines().stream()
                .filter(line -> line.amount() instanceof Amount.ToHundred)
                .findFirst();
        if (rest.isEmpty()) {
            problems.add(new Problem(
                    "reserve",
                    "No line of the formula is q.s. to 100, so there is nothing to take the correction out of."));
        }
        if (expected.isZero()) {
            problems.add(new Problem("reserve", "Nothing was dosed yet, so there is no amount to reserve."));
        }
        return problems;
    }

    /** The formula with this line; one of the same material up to a pH takes the new figures. */
    public Formula in(Formula formula) {
        Amount amount = new Amount.ToReading(ReadingKind.PH, expected, range);
        Optional<Line> there = formula.lines().stream().filter(this::isSame).findFirst();
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : formula.phases()) {
            List<Line> lines = new ArrayList<>();
            phase.lines()
                    .forEach(line -> lines.add(
                            there.filter(line::equals).isPresent()
                                    ? new Line(line.id(), materialKey, amount, line.note())
                                    : line));
            phases.add(new Phase(phase.id(), phase.name(), lines, phase.steps()));
        }
        if (there.isEmpty()) {
            Phase last = phases.remove(phases.size() - 1);
            List<Line> lines = new ArrayList<>(last.lines());
            lines.add(new Line(freeId(formula), materialKey, amount, note));
            phases.add(new Phase(last.id(), last.name(), lines, last.steps()));
        }
        return new Formula(phases);
    }

    private boolean isSame(Line line) {
        return line.materialKey().equals(materialKey)
                && line.amount() instanceof Amount.ToReading reading
                && reading.reading() == ReadingKind.PH;
    }

    private static String freeId(Formula formula) {
        Set<String> taken = new HashSet<>();
        formula.lines().forEach(line -> taken.add(line.id()));
        int number = 1;
        while (taken.contains("ph-" + number)) {
            number++;
        }
        return "ph-" + number;
    }
}
