package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/**
 * A batch that is made to be blended with one in which a line is over: of that line it holds so much less than the
 * formula asks, of all others as much, so that the two together are the formula again.
 *
 * @param less by how much the line is over in the other batch [g]
 * @param mass of this batch [g]
 */
public record LineLess(String lineId, Grams less, Grams mass) {
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    /** Whether the line holds at least so much that it can be less. */
    public boolean fits(Formula formula) {
        Optional<Amount> amount = formula.line(lineId).map(Line::amount);
        return less.signum() > 0
                && mass.signum() > 0
                && amount.filter(one -> one.match(
                                fixed -> grown(fixed.percent()).compareTo(lessPercent()) >= 0,
                                () -> true,
                                reading -> false))
                        .isPresent();
    }

    /** The formula as it is weighed: what fills up to 100 follows. */
    public Formula applied(Formula formula) {
        return PremixUse.lines(
                formula,
                line -> line.amount() instanceof Amount.Fixed amount
                        ? new Line(line.id(), line.materialKey(), new Amount.Fixed(weighed(line, amount)), line.note())
                        : line);
    }

    /** The limits hold for the two together: alone this batch may hold less of the line, and a trace more of the others. */
    public Map<String, PercentRange> applied(Map<String, PercentRange> allowed) {
        Map<String, PercentRange> wider = new HashMap<>();
        allowed.forEach((id, range) -> wider.put(
                id,
                new PercentRange(
                        id.equals(lineId) ? Percent.ZERO : range.low(),
                        new Percent(grown(range.high()).min(BigDecimal.valueOf(100))))));
        return wider;
    }

    private Percent weighed(Line line, Amount.Fixed amount) {
        BigDecimal grown = grown(amount.percent());
        return new Percent(line.id().equals(lineId) ? grown.subtract(lessPercent()) : grown);
    }

    /** A share of the batch that this would be with the line whole, as a share of what it is [%]. */
    private BigDecimal grown(Percent share) {
        return share.value().multiply(mass.plus(less).value()).divide(mass.value(), DIGITS);
    }

    private BigDecimal lessPercent() {
        return less.value().movePointRight(2).divide(mass.value(), DIGITS);
    }
}
