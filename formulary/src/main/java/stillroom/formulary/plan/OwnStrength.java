package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/**
 * A formula worked with materials of another strength than the author's: as much of what counts is brought, and the line that is
 * q.s. to 100 takes the difference.
 *
 * @param written strength for which the formula is written, by line id [% of the material]
 * @param own strength of what is at hand, on the same basis, by line id [% of the material], above 0
 */
public record OwnStrength(Map<String, BigDecimal> written, Map<String, BigDecimal> own) {
    /** Percentages are rounded to so many decimals, half even: finer than any balance of a workshop. */
    public static final int DECIMALS = 6;

    public OwnStrength {
        written = Map.copyOf(written);
        own = Map.copyOf(own);
    }

    /**
     * The formula at these strengths; empty where no line is q.s. to 100 or where the stronger need leaves nothing for it.
     */
    public Optional<Formula> of(Formula formula) {
        if (own.isEmpty()) {
            return Optional.of(formula);
        }
        try {
            Formula changed =
                    new Formula(formula.phases().stream().map(this::of).toList());
            boolean taken = FormulaSum.toHundredLines(changed) == 1
                    && FormulaSum.withoutToHundred(changed).compareTo(BigDecimal.valueOf(100)) < 0;
            return taken ? Optional.of(changed) : Optional.empty();
        } catch (IllegalArgumentException moreThanAll) {
            return Optional.empty();
        }
    }

    private Phase of(Phase phase) {
        return new Phase(
                phase.id(), phase.name(), phase.lines().stream().map(this::of).toList(), phase.steps());
    }

    private Line of(Line line) {
        return concerns(line.id())
                ? new Line(line.id(), line.materialKey(), of(line.id(), line.amount()), line.note())
                : line;
    }

    private boolean concerns(String id) {
        return own.containsKey(id) && written.containsKey(id);
    }

    private Amount of(String id, Amount amount) {
        return amount.match(
                fixed -> new Amount.Fixed(scaled(id, fixed.percent(), DECIMALS, RoundingMode.HALF_EVEN)),
                Amount.ToHundred::new,
                to -> new Amount.ToReading(
                        to.reading(),
                        scaled(id, to.expected(), DECIMALS, RoundingMode.HALF_EVEN),
                        new PercentRange(
                                scaled(id, to.range().low(), DECIMALS, RoundingMode.FLOOR),
                                scaled(id, to.range().high(), DECIMALS, RoundingMode.CEILING))));
    }

    private Percent scaled(String id, Percent percent, int decimals, RoundingMode mode) {
        return new Percent(percent.value().multiply(written.get(id)).divide(own.get(id), decimals, mode));
    }

    /** What a law or a preservative's minimum leaves, at these strengths: rounded inwards. */
    public Map<String, PercentRange> limits(Map<String, PercentRange> allowed) {
        Map<String, PercentRange> scaled = new TreeMap<>(allowed);
        scaled.replaceAll((id, range) -> concerns(id) ? limit(id, range) : range);
        return scaled;
    }

    private PercentRange limit(String id, PercentRange range) {
        BigDecimal low =
                range.low().value().multiply(written.get(id)).divide(own.get(id), DECIMALS, RoundingMode.CEILING);
        BigDecimal high =
                range.high().value().multiply(written.get(id)).divide(own.get(id), DECIMALS, RoundingMode.FLOOR);
        BigDecimal most = BigDecimal.valueOf(100);
        return new PercentRange(
                new Percent(low.min(most)), new Percent(high.min(most).max(low.min(most))));
    }
}
