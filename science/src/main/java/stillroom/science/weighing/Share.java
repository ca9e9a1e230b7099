package stillroom.science.weighing;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One share of a whole that is to be rounded to a step.
 *
 * @param exact the share before rounding, not negative [unit of the whole]
 * @param step what its balance can tell apart, above 0
 * @param floor it must not be rounded below this
 * @param ceiling it must not be rounded above this
 */
public record Share(BigDecimal exact, BigDecimal step, Optional<BigDecimal> floor, Optional<BigDecimal> ceiling) {
    public Share {
        if (exact.signum() < 0 || step.signum() <= 0) {
            throw new IllegalArgumentException("share " + exact.toPlainString() + " with step " + step.toPlainString()
                    + ": the share must not be negative, the step above 0");
        }
    }

    public static Share free(BigDecimal exact, BigDecimal step) {
        return new Share(exact, step, Optional.empty(), Optional.empty());
    }

    /** Whether some whole number of steps lies between floor and ceiling. */
    public boolean hasStep() {
        return rounded().isPresent();
    }

    boolean limited() {
        return floor.isPresent() || ceiling.isPresent();
    }

    boolean allows(BigDecimal value) {
        return value.signum() >= 0
                && floor.map(low -> value.compareTo(low) >= 0).orElse(true)
                && ceiling.map(high -> value.compareTo(high) <= 0).orElse(true);
    }

    /** Nearest whole number of steps within floor and ceiling; none where no step lies between them. */
    Optional<BigDecimal> rounded() {
        BigDecimal value = Steps.nearest(exact, step);
        if (ceiling.isPresent() && value.compareTo(ceiling.get()) > 0) {
            value = Steps.notAbove(ceiling.get(), step);
        }
        if (floor.isPresent() && value.compareTo(floor.get()) < 0) {
            value = Steps.notBelow(floor.get(), step);
        }
        return allows(value) ? Optional.of(value) : Optional.empty();
    }
}
