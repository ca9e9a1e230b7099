package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounding to a whole number of steps, in decimals: 0.1 is one tenth here, never its binary neighbour. */
public final class Steps {
    private Steps() {}

    /**
     * The nearest whole number of steps, ties to the even one [unit of the value].
     *
     * <p>Source: ISO 80000-1:2009, annex B, rule A.
     */
    public static BigDecimal nearest(BigDecimal value, BigDecimal step) {
        return rounded(value, step, RoundingMode.HALF_EVEN);
    }

    /** The largest whole number of steps that is not above the value [unit of the value]. */
    public static BigDecimal notAbove(BigDecimal value, BigDecimal step) {
        return rounded(value, step, RoundingMode.FLOOR);
    }

    /** The smallest whole number of steps that is not below the value [unit of the value]. */
    public static BigDecimal notBelow(BigDecimal value, BigDecimal step) {
        return rounded(value, step, RoundingMode.CEILING);
    }

    private static BigDecimal rounded(BigDecimal value, BigDecimal step, RoundingMode mode) {
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("step is " + step.toPlainString() + ", must be above 0");
        }
        return value.divide(step, 0, mode).multiply(step);
    }
}
