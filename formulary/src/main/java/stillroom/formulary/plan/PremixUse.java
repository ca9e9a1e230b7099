package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/**
 * A line weighed as a premix: its carrier is taken out of the carrier's own line, so that the product stays the same.
 *
 * @param premixKey card of the premix
 * @param strength share of the line's material in the premix as it was really made, above 0 [%]
 * @param carrierLineId a line of the carrier
 */
public record PremixUse(String lineId, String premixKey, Percent strength, String carrierLineId) {
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    /** Whether the formula has both lines, a fixed amount to weigh, and enough of the carrier. */
    public boolean fits(Formula formula) {
        Optional<Percent> line = fixed(formula, lineId);
        Optional<Amount> carrier = formula.line(carrierLineId).map(Line::amount);
        return line.isPresent()
                && carrier.isPresent()
                && inPremix(line.get()).compareTo(BigDecimal.valueOf(100)) <= 0
                && carrier.get()
                        .match(
                                amount -> amount.percent()
                                                .value()
                                                .compareTo(inPremix(line.get())
                                                        .subtract(line.get().value()))
                                        >= 0,
                                () -> true,
                                reading -> false);
    }

    /** The formula as it is weighed with the premix. */
    public Formula applied(Formula formula) {
        Percent line = fixed(formula, lineId).orElseThrow();
        Percent premix = new Percent(inPremix(line));
        Percent brought = premix.minus(line);
        return lines(formula, one -> {
            if (one.id().equals(lineId)) {
                return new Line(one.id(), premixKey, new Amount.Fixed(premix), one.note());
            }
            return one.id().equals(carrierLineId) && one.amount() instanceof Amount.Fixed amount
                    ? new Line(
                            one.id(),
                            one.materialKey(),
                            new Amount.Fixed(amount.percent().minus(brought)),
                            one.note())
                    : one;
        });
    }

    /** What a law leaves of the line's material, as shares of the premix. */
    public Map<String, PercentRange> applied(Map<String, PercentRange> allowed) {
        Map<String, PercentRange> scaled = new HashMap<>(allowed);
        scaled.computeIfPresent(
                lineId,
                (id, range) -> new PercentRange(
                        atMostHundred(range.low(), RoundingMode.CEILING),
                        atMostHundred(range.high(), RoundingMode.FLOOR)));
        return scaled;
    }

    private Percent atMostHundred(Percent share, RoundingMode rounding) {
        BigDecimal scaled = share.value().movePointRight(2).divide(strength.value(), new MathContext(15, rounding));
        return new Percent(scaled.min(BigDecimal.valueOf(100)));
    }

    private BigDecimal inPremix(Percent line) {
        return line.value().movePointRight(2).divide(strength.value(), DIGITS);
    }

    private static Optional<Percent> fixed(Formula formula, String id) {
        return formula.line(id)
                .map(Line::amount)
                .filter(Amount.Fixed.class::isInstance)
                .map(amount -> ((Amount.Fixed) amount).percent());
    }

    static Formula lines(Formula formula, UnaryOperator<Line> change) {
        List<Phase> phases = formula.phases().stream()
                .map(phase -> new Phase(
                        phase.id(),
                        phase.name(),
                        phase.lines().stream().map(change).toList(),
                        phase.steps()))
                .toList();
        return new Formula(phases);
    }
}
