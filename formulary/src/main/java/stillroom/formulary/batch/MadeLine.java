package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * One line as it was really made, beside what was planned.
 *
 * @param lineId the line, or an id of its own for what no line asked for
 * @param target planned, or only expected where it is added up to a reading; none for what no line asked for [g]
 * @param tolerance how far it may be off [g]
 * @param asked percent in the formula
 * @param actual what was put in, exact [g]
 * @param made its share of the product as added, samples allowed for [%]
 * @param toReading whether it was added up to a reading; corrections with the same material count here
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

    /**
     * Actual less target, in percent of the target, to a tenth, halves away from zero as the bench shows it; none without
     * a target, and none where the target was only expected [%].
     */
    public Optional<BigDecimal> deviationPercent() {
        return target.filter(planned -> planned.signum() > 0 && !toReading)
                .map(planned -> actual.minus(planned)
                        .value()
                        .movePointRight(2)
                        .divide(planned.value(), 1, RoundingMode.HALF_UP));
    }

    /** Whether it lies within its tolerance; lines to a reading and unplanned ones have none. */
    public boolean withinTolerance() {
        return toReading
                || target.isEmpty()
                || actual.minus(target.get()).abs().compareTo(tolerance.orElse(Grams.ZERO)) <= 0;
    }
}
