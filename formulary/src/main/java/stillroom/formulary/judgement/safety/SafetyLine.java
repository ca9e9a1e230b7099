package stillroom.formulary.judgement.safety;

import stillroom.formulary.evaluation.Outcome;

/**
 * One constituent of the assessor's table.
 *
 * @param percent in the pot, upper end, with which all else is reckoned [%]
 * @param nominalPercent in the pot, nominal [%]
 * @param absorbedFraction dermal absorption taken
 * @param absorptionSource where it comes from; says so where it is the default
 * @param systemicMilligramsPerKilogramDay systemic exposure dose by this product [mg/kg/d]
 * @param departure the systemic dose from which the margin is reckoned, or why there is none [mg/kg/d]
 * @param margin point of departure over exposure by this product, or why there is none
 * @param aggregateMargin the same over the exposure by all products together, for preservatives; or why there is none
 * @param leastMargin margin asked for
 * @param source of the point of departure; empty where there is none
 */
public record SafetyLine(
        String substance,
        String name,
        double percent,
        double nominalPercent,
        double absorbedFraction,
        String absorptionSource,
        Outcome<Double> systemicMilligramsPerKilogramDay,
        Outcome<Double> departure,
        Outcome<Double> margin,
        Outcome<Double> aggregateMargin,
        double leastMargin,
        String source) {
    /** Whether the known margin of this product is less than asked for; false says nothing, least of all that it is safe. */
    public boolean isBelow() {
        return isLess(margin);
    }

    /** The same over all products together. */
    public boolean isBelowTogether() {
        return isLess(aggregateMargin);
    }

    private boolean isLess(Outcome<Double> one) {
        return one.match(known -> known < leastMargin, because -> false);
    }
}
