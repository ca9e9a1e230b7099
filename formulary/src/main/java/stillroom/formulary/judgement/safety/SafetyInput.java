package stillroom.formulary.judgement.safety;

import java.util.Optional;

/**
 * What is known about one substance for the assessor's table, entered by the maker with its sources.
 *
 * @param departure where it is known
 * @param absorbedFraction dermal absorption, 0 to 1, where it is known
 * @param absorptionSource where that comes from; not blank where a fraction is given
 */
public record SafetyInput(
        Optional<PointOfDeparture> departure, Optional<Double> absorbedFraction, String absorptionSource) {
    public static final SafetyInput NOTHING = new SafetyInput(Optional.empty(), Optional.empty(), "");

    public SafetyInput {
        absorbedFraction.ifPresent(fraction -> {
            if (!(fraction >= 0 && fraction <= 1)) {
                throw new IllegalArgumentException("dermal absorption " + fraction + " is not 0 to 1");
            }
        });
        if (absorbedFraction.isPresent() && absorptionSource.isBlank()) {
            throw new IllegalArgumentException("a dermal absorption needs its source");
        }
    }

    public boolean isEmpty() {
        return departure.isEmpty() && absorbedFraction.isEmpty();
    }
}
