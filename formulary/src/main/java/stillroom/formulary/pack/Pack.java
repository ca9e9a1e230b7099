package stillroom.formulary.pack;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A kind of container.
 *
 * @param name what the maker calls it, unique in the workshop
 * @param material of the body, such as glass or PET
 * @param liner of the closure, may be empty
 * @param capacityMillilitres brimful [ml]
 * @param tare mean of empty ones with their closure [g]
 * @param tareDeviation standard deviation of empty ones [g]
 * @param hotFillCelsius highest temperature at which it is filled [degrees Celsius]
 * @param compatibility what was found with which product, may be empty
 */
public record Pack(
        String name,
        String material,
        String liner,
        Optional<BigDecimal> capacityMillilitres,
        Optional<Grams> tare,
        Optional<Grams> tareDeviation,
        Optional<Double> hotFillCelsius,
        String compatibility) {
    public Pack {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a container has a name");
        }
    }
}
