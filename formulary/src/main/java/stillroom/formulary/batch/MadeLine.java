package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * One line as it was really made, beside what was planned.
 *
 * @param lineId the line, or an id of its own for what no line asked for
 * @param target planned; none for corrections and free-hand work [g]
 * @param tolerance how far it may be off [g]
 * @param asked percent in the formula
 * @param actual what was put in, exact [g]
 * @param made its share of the product as added, samples allowed for [%]
 * @param toReading whether it was added up to a reading
 */
public record MadeLine(
        String lineId,
        String phaseId,
        String materialKey,
        Optional<Grams> target,
        Optional<Grams> tolerance,
        Optional<Percent> asked,
        Grams actual,
        Percent made,
        boolean toReading) {

    /** Actual less target, in percent of the target; none without a target [%]. */
    public Optional<BigDecimal> deviationPercent() {
        return target.filter(planned -> planned.signum() > 0)
                .map(planned ->
                        actual.minus(planned).value().movePointRight(2).divide(planned.value(), MathContext.DECIMAL32));
    }

    /** Whether it lies within its tolerance; lines to a reading and unplanned ones have none. */
    public boolean withinTolerance() {
        return toReading
                || target.isEmpty()
                || actual.minus(target.get()).abs().compareTo(tolerance.orElse(Grams.ZERO)) <= 0;
    }
}
