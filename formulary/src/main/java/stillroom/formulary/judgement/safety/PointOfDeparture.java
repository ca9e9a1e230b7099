package stillroom.formulary.judgement.safety;

/**
 * The dose of a toxicity study from which a margin is reckoned, as the maker or a cited opinion gives it.
 *
 * @param milligramsPerKilogramDay dose as found in the study [mg/kg/d]
 * @param found what kind of dose it is, which decides what it is divided by
 * @param shortStudy whether it comes from a study of about 28 days, which divides by 3 once more (notes of guidance, from
 *     memory)
 * @param bioavailableFraction share of an oral dose that reaches the body; 1 where the dose is systemic already, 0.5 by
 *     default where nothing is known (notes of guidance, from memory)
 * @param leastMargin margin asked for, 100 by default; another one needs its reason in {@code source}
 */
public record PointOfDeparture(
        double milligramsPerKilogramDay,
        Found found,
        boolean shortStudy,
        double bioavailableFraction,
        double leastMargin,
        String source) {
    /** Share of an oral dose taken where nothing is known: SCCS notes of guidance, from memory. */
    public static final double DEFAULT_BIOAVAILABLE = 0.5;

    /** Ten between species times ten among people: SCCS notes of guidance, from memory. */
    public static final double DEFAULT_MARGIN = 100;

    private static final double STEP = 3;

    /** What kind of dose a study gave. */
    public enum Found {
        NO_ADVERSE_EFFECT("dose without adverse effect (NOAEL)", 1),
        BENCHMARK("lower benchmark dose (BMDL)", 1),
        /** Divided by 3: notes of guidance, from memory. */
        LOWEST_ADVERSE_EFFECT("lowest dose with an adverse effect (LOAEL), divided by 3", STEP);

        private final String words;
        private final double divisor;

        Found(String words, double divisor) {
            this.words = words;
            this.divisor = divisor;
        }

        public String words() {
            return words;
        }
    }

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
        return new PointOfDeparture(
                milligramsPerKilogramDay, Found.NO_ADVERSE_EFFECT, false, 1, DEFAULT_MARGIN, source);
    }

    /** The dose that reaches the body, from which the margin is reckoned [mg/kg/d]. */
    public double systemicMilligramsPerKilogramDay() {
        return milligramsPerKilogramDay * bioavailableFraction / found.divisor / (shortStudy ? STEP : 1);
    }
}
