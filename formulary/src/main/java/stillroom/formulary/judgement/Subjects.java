package stillroom.formulary.judgement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.MassFraction;

/** Makes a formula ready to be judged: q.s. lines get their amounts, and a bad draft gets findings instead of a refusal. */
public final class Subjects {
    private static final String CRAFT = "common practice, no source";

    private Subjects() {}

    /** What the formula would be if worked as written, nothing evaporated, pH not yet read. */
    public static Subject of(Formula formula, Brief brief) {
        Sums sums = Sums.of(formula.lines());
        List<Portion> portions = new ArrayList<>();
        List<Finding> found = new ArrayList<>();
        List<String> toHundred = new ArrayList<>();
        for (Phase phase : formula.phases()) {
            for (Line line : phase.lines()) {
                boolean first = toHundred.isEmpty();
                if (line.amount() instanceof Amount.ToHundred) {
                    toHundred.add(line.id());
                }
                MassFraction share = share(line.amount(), sums, first);
                portions.add(new Portion(line.id(), phase.name(), line.materialKey(), share));
                if (line.amount() instanceof Amount.Fixed fixed
                        && fixed.percent().isZero()) {
                    found.add(zeroLine(line));
                }
            }
        }
        if (toHundred.size() > 1) {
            found.add(twoToHundred(toHundred));
        }
        if (!toHundred.isEmpty() && sums.nominal().compareTo(BigDecimal.valueOf(100)) >= 0) {
            found.add(nothingLeft(toHundred, sums));
        }
        return new Subject(brief, portions, formula.phases(), 0, Optional.empty(), found);
    }

    private static MassFraction share(Amount amount, Sums sums, boolean firstToHundred) {
        return amount.match(
                fixed -> MassFraction.exactly(fixed.percent().massFraction()),
                () -> firstToHundred ? sums.rest() : MassFraction.exactly(0),
                reading -> new MassFraction(
                        reading.range().low().massFraction(),
                        reading.expected().massFraction(),
                        reading.range().high().massFraction()));
    }

    private static Finding zeroLine(Line line) {
        return new Finding(
                Finding.Kind.LOOK_AT_THIS,
                "balance.zero-line",
                CRAFT,
                List.of(line.id()),
                List.of(),
                "This line is at 0 %.",
                "Give it an amount, or take it out; a plan leaves it out.");
    }

    private static Finding twoToHundred(List<String> lines) {
        return new Finding(
                Finding.Kind.PROBABLE_FAULT,
                "balance.two-to-hundred",
                CRAFT,
                lines,
                List.of(),
                lines.size() + " lines are q.s. to 100; only one can take what is left.",
                "Keep one line q.s. to 100 and give the others a percentage.");
    }

    private static Finding nothingLeft(List<String> lines, Sums sums) {
        double others = sums.nominal().doubleValue();
        return new Finding(
                Finding.Kind.PROBABLE_FAULT,
                "balance.nothing-left",
                CRAFT,
                lines,
                List.of(Figure.exactly("Other lines", others, "%", "sum of all lines but the q.s. line")),
                "The other lines already make "
                        + sums.nominal().stripTrailingZeros().toPlainString()
                        + " %; nothing is left for the q.s. line.",
                "Lower the other lines until they make less than 100 %.");
    }

    /** Sums of all lines but the q.s.-to-100 line: low, expected and high [%]. */
    private record Sums(BigDecimal low, BigDecimal nominal, BigDecimal high) {
        static Sums of(List<Line> lines) {
            BigDecimal low = BigDecimal.ZERO;
            BigDecimal nominal = BigDecimal.ZERO;
            BigDecimal high = BigDecimal.ZERO;
            for (Line line : lines) {
                if (line.amount() instanceof Amount.Fixed fixed) {
                    low = low.add(fixed.percent().value());
                    nominal = nominal.add(fixed.percent().value());
                    high = high.add(fixed.percent().value());
                } else if (line.amount() instanceof Amount.ToReading reading) {
                    low = low.add(reading.range().low().value());
                    nominal = nominal.add(reading.expected().value());
                    high = high.add(reading.range().high().value());
                }
            }
            return new Sums(low, nominal, high);
        }

        MassFraction rest() {
            return new MassFraction(left(high), left(nominal), left(low));
        }

        private static double left(BigDecimal taken) {
            return BigDecimal.valueOf(100)
                    .subtract(taken)
                    .max(BigDecimal.ZERO)
                    .movePointLeft(2)
                    .doubleValue();
        }
    }
}
