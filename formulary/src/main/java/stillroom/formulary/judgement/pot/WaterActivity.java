package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.material.Substance;
import stillroom.science.activity.WaterOverSalt;

/**
 * Water activity of the water phase: Norrish's equation for each humectant, Pitzer's for sodium chloride, each at its own
 * ratio to the whole water, and Ross's product over them [dimensionless, 0 to 1].
 *
 * <p>aw = Xw · exp(-K · Xs²) with mole fractions. Valid for about aw above 0.85; below, it is an indication. Other
 * salts, alcohols, surfactants and polymers are left out and named, so that the true figure lies a little lower. Source:
 * Norrish 1966 as tabled in {@code norrish.csv}; Ross 1975 (from memory).
 */
public final class WaterActivity {
    private static final double WATER_GRAMS_PER_MOL = 18.015;
    private static final double VALID_ABOVE = 0.85;
    private static final double PITZER_TO_MOL_PER_KG = 6.2;
    private static final double WORTH_NAMING = 0.01;
    private static final String SALT = "sodium-chloride";

    private WaterActivity() {}

    static Optional<Figure> of(List<Share> shares, Map<String, Double> norrish) {
        return outcome(shares, norrish).match(Optional::of, because -> Optional.empty());
    }

    /** The figure, or why there is none. */
    public static Outcome<Figure> outcome(List<Share> shares, Map<String, Double> norrish) {
        double water = Pot.sum(shares.stream().filter(Share::isWater).toList());
        if (water <= 0) {
            return Outcome.notKnown("there is no water in it");
        }
        double activity = 1;
        List<String> leftOut = new ArrayList<>();
        for (Share share : shares) {
            Double k = norrish.get(share.key());
            Optional<Double> molarMass = share.substance().flatMap(Substance::molarMassGramsPerMol);
            if (k != null && molarMass.isPresent()) {
                activity *= ofOne(water, share.nominal(), molarMass.get(), k);
            } else if (share.key().equals(SALT) && molarMass.isPresent()) {
                double molality = share.nominal() / molarMass.get() / water * 1000;
                activity *= WaterOverSalt.SODIUM_CHLORIDE.waterActivity(Math.min(molality, PITZER_TO_MOL_PER_KG));
            } else if (bindsWater(share)) {
                leftOut.add(share.name());
            }
        }
        String range = activity >= VALID_ABOVE ? "" : "; below 0.85 an indication only";
        String without = leftOut.isEmpty()
                ? ""
                : "; " + Words.list(leftOut) + " left out, no constant is recorded: the true figure is a little lower";
        return Outcome.known(new Figure(
                "Water activity",
                Math.max(0, activity - 0.02),
                activity,
                Math.min(1, activity + 0.01),
                "",
                "Norrish for each humectant, Pitzer for sodium chloride, product over them (Ross)" + range + without,
                List.of("Norrish 1966; constants: see the table")));
    }

    /** Something dissolved in more than a percent that lowers the figure, but has no constant. */
    private static boolean bindsWater(Share share) {
        boolean dissolved =
                share.is("humectant") || share.is("sugar") || share.is("alcohol") || share.is("electrolyte");
        return dissolved && share.nominal() >= WORTH_NAMING;
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
