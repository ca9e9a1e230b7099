package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** The smallest net weight that a balance can be trusted with, for a wanted tolerance. */
public final class MinimumWeight {
    /** Tolerance of the pharmacopoeial figure [%]. Source: USP general chapter 41, Balances. */
    public static final BigDecimal PHARMACOPOEIAL_PERCENT = new BigDecimal("0.10");

    private static final BigDecimal LEAST_STEPS = new BigDecimal("0.41");
    private static final BigDecimal TWO_HUNDRED = BigDecimal.valueOf(200);
    private static final BigDecimal SQRT_TWO = BigDecimal.valueOf(2).sqrt(MathContext.DECIMAL64);

    private MinimumWeight() {}

    /**
     * The standard deviation of one reading: the measured repeatability, but never less than 0.41 steps, which is what
     * rounding to a step alone would give [g].
     *
     * <p>Source: USP general chapter 41, Balances (0.41 d in place of a smaller s).
     */
    public static BigDecimal deviation(Optional<BigDecimal> repeatability, BigDecimal step) {
        return LEAST_STEPS.multiply(step).max(repeatability.orElse(BigDecimal.ZERO));
    }

    /** The standard deviation of a difference of two readings, as when pouring into a filled vessel: s times root 2 [g]. */
    public static BigDecimal ofTwoReadings(BigDecimal deviation) {
        return deviation.multiply(SQRT_TWO, MathContext.DECIMAL64);
    }

    /**
     * The smallest net weight for which twice the standard deviation stays within the tolerance: 200 s / tolerance % [g].
     *
     * <p>Source: USP general chapter 41, Balances: 2 s / smallest net weight at most 0.10 %, here for any tolerance.
     *
     * @param deviation standard deviation of the weighing [g]
     * @param tolerancePercent above 0 [% of the net weight]
     */
    public static BigDecimal of(BigDecimal deviation, BigDecimal tolerancePercent) {
        if (tolerancePercent.signum() <= 0) {
            throw new IllegalArgumentException(
                    "tolerance is " + tolerancePercent.toPlainString() + " %, must be above 0 %");
        }
        return TWO_HUNDRED.multiply(deviation).divide(tolerancePercent, MathContext.DECIMAL64);
    }

    /** The same at the pharmacopoeial 0.10 %, for information: 2000 s [g]. */
    public static BigDecimal pharmacopoeial(BigDecimal deviation) {
        return of(deviation, PHARMACOPOEIAL_PERCENT);
    }
}
