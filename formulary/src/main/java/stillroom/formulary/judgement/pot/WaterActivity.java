package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.material.Substance;

/**
 * Water activity of the water phase from its humectants, by Norrish's equation for each solute at its own ratio to the
 * whole water and Ross's product over the solutes [dimensionless, 0 to 1].
 *
 * <p>aw = Xw · exp(-K · Xs²) with mole fractions. Valid for about aw above 0.85; below, it is an indication.
 * Electrolytes, alcohols and polymers without a constant are left out, so that the true figure lies a little lower.
 * Source: Norrish 1966 as tabled in {@code norrish.csv}; Ross 1975 (from memory).
 */
public final class WaterActivity {
    private static final double WATER_GRAMS_PER_MOL = 18.015;
    private static final double VALID_ABOVE = 0.85;

    private WaterActivity() {}

    static Optional<Figure> of(List<Share> shares, Map<String, Double> norrish) {
        double water = Pot.sum(shares.stream().filter(Share::isWater).toList());
        if (water <= 0) {
            return Optional.empty();
        }
        double activity = 1;
        for (Share share : shares) {
            Double k = norrish.get(share.key());
            Optional<Double> molarMass = share.substance().flatMap(Substance::molarMassGramsPerMol);
            if (k != null && molarMass.isPresent()) {
                activity *= ofOne(water, share.nominal(), molarMass.get(), k);
            }
        }
        String range = activity >= VALID_ABOVE ? "" : "; below 0.85 an indication only";
        return Optional.of(new Figure(
                "Water activity",
                Math.max(0, activity - 0.02),
                activity,
                Math.min(1, activity + 0.01),
                "",
                "Norrish for each humectant, product over them (Ross)" + range,
                List.of("Norrish 1966; constants: see the table")));
    }

    /**
     * Water activity of one solute in water.
     *
     * @param waterMass mass of water, in the unit of {@code soluteMass}
     * @param k Norrish's constant of the solute
     */
    public static double ofOne(double waterMass, double soluteMass, double soluteGramsPerMol, double k) {
        double solute = soluteMass / soluteGramsPerMol;
        double soluteFraction = solute / (solute + waterMass / WATER_GRAMS_PER_MOL);
        return (1 - soluteFraction) * Math.exp(-k * soluteFraction * soluteFraction);
    }
}
