package stillroom.formulary.reformulation;

import java.util.HashMap;
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
 * @param own by the name of a figure such as "Anionic active matter" or "Oil shelf", where it has a width of its own in the
 *     measure of its kind; a class of which there is none may rise to so many percent of the formula
 * @param noHarsher no more anionic or cationic active matter than now, and no more net charge
 */
public record Bands(
        double activeMatter,
        double water,
        double charge,
        double family,
        double hlb,
        OptionalDouble cost,
        OptionalDouble natural,
        Map<String, Double> constituents,
        Map<String, Double> own,
        boolean noHarsher) {
    public static final Bands USUAL =
            new Bands(10, 5, 15, 20, 1, OptionalDouble.empty(), OptionalDouble.empty(), Map.of());

    public Bands {
        constituents = Map.copyOf(constituents);
        own = Map.copyOf(own);
    }

    /** Without widths of their own. */
    public Bands(
            double activeMatter,
            double water,
            double charge,
            double family,
            double hlb,
            OptionalDouble cost,
            OptionalDouble natural,
            Map<String, Double> constituents) {
        this(activeMatter, water, charge, family, hlb, cost, natural, constituents, Map.of(), false);
    }

    public Bands withCost(double highest) {
        return new Bands(
                activeMatter,
                water,
                charge,
                family,
                hlb,
                OptionalDouble.of(highest),
                natural,
                constituents,
                own,
                noHarsher);
    }

    Bands withoutCost() {
        return new Bands(
                activeMatter,
                water,
                charge,
                family,
                hlb,
                OptionalDouble.empty(),
                natural,
                constituents,
                own,
                noHarsher);
    }

    public Bands withNatural(double lowest) {
        return new Bands(
                activeMatter,
                water,
                charge,
                family,
                hlb,
                cost,
                OptionalDouble.of(lowest),
                constituents,
                own,
                noHarsher);
    }

    /** One figure with a width of its own. */
    public Bands withOwn(String figure, double width) {
        return new Bands(
                activeMatter,
                water,
                charge,
                family,
                hlb,
                cost,
                natural,
                constituents,
                and(own, figure, width),
                noHarsher);
    }

    public Bands withConstituent(String substanceKey, double width) {
        return new Bands(
                activeMatter,
                water,
                charge,
                family,
                hlb,
                cost,
                natural,
                and(constituents, substanceKey, width),
                own,
                noHarsher);
    }

    public Bands noHarsher(boolean asked) {
        return new Bands(activeMatter, water, charge, family, hlb, cost, natural, constituents, own, asked);
    }

    private static Map<String, Double> and(Map<String, Double> some, String key, double width) {
        Map<String, Double> more = new HashMap<>(some);
        more.put(key, width);
        return more;
    }
}
