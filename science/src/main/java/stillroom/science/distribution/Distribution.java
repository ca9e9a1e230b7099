package stillroom.science.distribution;

import java.util.List;

/**
 * Where a weak acid or a neutral substance goes in a mixture of water, oil and micelles at equilibrium.
 *
 * <p>Only the uncharged form enters oil and micelles; with f the uncharged share of what is in the water and c the
 * concentration of the uncharged form there, total = c (W/f + Σ P·O + Σ 100·k·S). P is the ratio of concentrations oil
 * to water; k is the constant of R = 1 + k·s, the ratio of total to free in a surfactant solution of s percent. For f = 1
 * this is C(O+1)/(P·O + R) of Bean and others. Source: Journal of the Society of Cosmetic Chemists 23 (1972), 714 to
 * 717, read. Valid for dilute solutes, where P and k do not depend on the amount.
 *
 * @param water mass of the water phase [any unit, the same for all masses]
 * @param oils each with its own ratio
 * @param micelles each surfactant with its own constant
 */
public record Distribution(double water, List<Oil> oils, List<Micelles> micelles) {
    public Distribution {
        if (!(water > 0)) {
            throw new IllegalArgumentException("water " + water + ": without a water phase nothing divides");
        }
        oils = List.copyOf(oils);
        micelles = List.copyOf(micelles);
    }

    /**
     * @param mass of the oil, not below 0
     * @param ratio concentration in the oil over that in the water, uncharged form [-]
     */
    public record Oil(double mass, double ratio) {}

    /**
     * @param mass of the surfactant, not below 0
     * @param perPercent k of R = 1 + k·s [1/%, surfactant in percent of the water]
     */
    public record Micelles(double mass, double perPercent) {}

    /** What the oils hold for each unit of concentration in the water [mass unit]. */
    public double heldByOil() {
        return oils.stream().mapToDouble(oil -> oil.mass() * oil.ratio()).sum();
    }

    /** What the micelles hold for each unit of concentration in the water [mass unit]. */
    public double heldByMicelles() {
        return micelles.stream()
                .mapToDouble(one -> 100 * one.mass() * one.perPercent())
                .sum();
    }

    /**
     * Uncharged form in the water [mass per mass of water].
     *
     * @param total mass of the substance
     * @param uncharged share of what is in the water that carries no charge, 0 to 1
     */
    public double free(double total, double uncharged) {
        return uncharged * total / (water + uncharged * (heldByOil() + heldByMicelles()));
    }

    /** Share of the total that sits in the oil, 0 to 1. */
    public double inOil(double uncharged) {
        return uncharged * heldByOil() / (water + uncharged * (heldByOil() + heldByMicelles()));
    }

    /** Share of the total that sits in micelles, 0 to 1. */
    public double inMicelles(double uncharged) {
        return uncharged * heldByMicelles() / (water + uncharged * (heldByOil() + heldByMicelles()));
    }
}
