package stillroom.formulary.plan;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A balance of the workshop.
 *
 * @param step readability d [g], above 0
 * @param repeatability standard deviation s of repeated weighings under the maker's conditions [g], where measured
 * @param maximum largest load [g]
 */
public record Balance(String name, Grams step, Optional<Grams> repeatability, Grams maximum) {
    public Balance {
        if (step.signum() <= 0 || maximum.compareTo(step) <= 0) {
            throw new IllegalArgumentException("balance step " + step + " g and maximum " + maximum
                    + " g must be positive, the maximum above the step");
        }
    }
}
