package stillroom.formulary.plan;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A balance of the workshop.
 *
 * @param step readability d [g], above 0
 * @param repeatability standard deviation s of repeated weighings under the maker's conditions [g], where measured
 * @param maximum largest load [g]
 * @param check the last one with a reference mass
 * @param live how its line is read, where it has one
 */
public record Balance(
        String name,
        Grams step,
        Optional<Grams> repeatability,
        Grams maximum,
        Optional<BalanceCheck> check,
        Optional<LiveScale> live) {
    /** One that was never checked and is read by eye. */
    public Balance(String name, Grams step, Optional<Grams> repeatability, Grams maximum) {
        this(name, step, repeatability, maximum, Optional.empty(), Optional.empty());
    }

    /** The same after a check with a reference mass. */
    public Balance checked(BalanceCheck done) {
        return new Balance(name, step, repeatability, maximum, Optional.of(done), live);
    }

    /** The same, with what is known of its checks and of its line. */
    public Balance with(Optional<BalanceCheck> done, Optional<LiveScale> line) {
        return new Balance(name, step, repeatability, maximum, done, line);
    }

    public Balance {
        if (step.signum() <= 0 || maximum.compareTo(step) <= 0) {
            throw new IllegalArgumentException("balance step " + step + " g and maximum " + maximum
                    + " g must be positive, the maximum above the step");
        }
    }
}
