package stillroom.formulary.judgement.safety;

import stillroom.formulary.evaluation.Outcome;

/**
 * One constituent of the assessor's table.
 *
 * @param percent in the pot, upper end [%]
 * @param absorbedFraction dermal absorption taken, 0.5 by default
 * @param systemicMilligramsPerKilogramDay systemic exposure dose [mg/kg/d]
 * @param margin point of departure over exposure, or why there is none
 * @param leastMargin margin asked for
 */
public record SafetyLine(
        String substance,
        String name,
        double percent,
        double absorbedFraction,
        Outcome<Double> systemicMilligramsPerKilogramDay,
        Outcome<Double> margin,
        double leastMargin,
        String source) {
    /** Whether a known margin is less than asked for; false says nothing, least of all that it is safe. */
    public boolean isBelow() {
        return margin.match(known -> known < leastMargin, because -> false);
    }
}
