package stillroom.formulary.judgement.safety;

/**
 * The dose of a toxicity study from which a margin is reckoned, as the maker or a cited opinion gives it.
 *
 * @param milligramsPerKilogramDay dose without adverse effect [mg/kg/d]
 * @param bioavailableFraction share of an oral dose that reaches the body; 1 where the dose is systemic already, 0.5 by
 *     default where nothing is known (notes of guidance, from memory)
 * @param leastMargin margin asked for, 100 by default; another one needs its reason in {@code source}
 */
public record PointOfDeparture(
        double milligramsPerKilogramDay, double bioavailableFraction, double leastMargin, String source) {
    public PointOfDeparture {
        if (!(milligramsPerKilogramDay > 0) || !(bioavailableFraction > 0 && bioavailableFraction <= 1)) {
            throw new IllegalArgumentException("point of departure " + milligramsPerKilogramDay
                    + " mg/kg/d, bioavailable fraction " + bioavailableFraction + ": must be above 0, and 0 to 1");
        }
        if (!(leastMargin > 0) || source.isBlank()) {
            throw new IllegalArgumentException("a point of departure needs a margin above 0 and its source");
        }
    }

    /** A systemic dose with the usual margin of 100. */
    public static PointOfDeparture systemic(double milligramsPerKilogramDay, String source) {
        return new PointOfDeparture(milligramsPerKilogramDay, 1, 100, source);
    }
}
