package stillroom.formulary.reformulation;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * How far figures may move from where the formula has them.
 *
 * @param activeMatter of each class of surfactant, relative [%]
 * @param water in points of percent
 * @param charge of ionic surfactants and polymers, relative [%]
 * @param family of each shelf (oils, humectants ...), relative [%]
 * @param hlb of emulsifiers and of oils, in units, where it applies
 * @param cost highest per 100 g, in the workshop's currency
 * @param natural lowest natural origin [%]
 * @param constituents by substance key, how far each may move, relative [%]
 */
public record Bands(
        double activeMatter,
        double water,
        double charge,
        double family,
        double hlb,
        OptionalDouble cost,
        OptionalDouble natural,
        Map<String, Double> constituents) {
    public static final Bands USUAL =
            new Bands(10, 5, 15, 20, 1, OptionalDouble.empty(), OptionalDouble.empty(), Map.of());

    public Bands {
        constituents = Map.copyOf(constituents);
    }

    public Bands withCost(double highest) {
        return new Bands(activeMatter, water, charge, family, hlb, OptionalDouble.of(highest), natural, constituents);
    }

    public Bands withNatural(double lowest) {
        return new Bands(activeMatter, water, charge, family, hlb, cost, OptionalDouble.of(lowest), constituents);
    }
}
