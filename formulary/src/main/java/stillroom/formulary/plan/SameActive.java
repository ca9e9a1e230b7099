package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Percent;

/**
 * A line weighed so that it brings as much active matter as the card's nominal strength would; the line that fills up
 * to 100 takes the difference.
 *
 * @param factor how many times as strong as its card the lot is, above 0
 */
public record SameActive(String lineId, double factor) {
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    /** Whether the line is a fixed amount and another fills up to 100. */
    public boolean fits(Formula formula) {
        return factor > 0
                && formula.line(lineId)
                        .map(Line::amount)
                        .filter(Amount.Fixed.class::isInstance)
                        .isPresent()
                && formula.lines().stream().anyMatch(line -> line.amount() instanceof Amount.ToHundred);
    }

    /** The formula as it is weighed with that lot. */
    public Formula applied(Formula formula) {
        return PremixUse.lines(
                formula,
                line -> line.id().equals(lineId) && line.amount() instanceof Amount.Fixed amount
                        ? new Line(
                                line.id(), line.materialKey(), new Amount.Fixed(scaled(amount.percent())), line.note())
                        : line);
    }

    private Percent scaled(Percent nominal) {
        BigDecimal other = nominal.value().divide(BigDecimal.valueOf(factor), DIGITS);
        return new Percent(other.min(BigDecimal.valueOf(100)));
    }
}
