package stillroom.formulary.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** A premix as a material of its own, and the recipe by which it is made. */
public final class PremixCard {
    /** Ids of the lines of its recipe. */
    public static final String CONCENTRATE = "concentrate";

    public static final String CARRIER = "carrier";

    private static final String CARD = "material:";

    private PremixCard() {}

    /**
     * The card. What it holds follows from the cards of its two parts, whatever these become.
     *
     * @param share of the concentrate [%]
     * @param root share of the raw material that is diluted, in one step or two, by its name [%]
     */
    public static Material of(
            String key,
            String name,
            LocalDate day,
            Material concentrate,
            Material carrier,
            Percent share,
            Strength root) {
        List<String> cautions = new ArrayList<>(concentrate.cautions());
        return new Material(
                key,
                0,
                day,
                name,
                concentrate.family(),
                concentrate.functions(),
                composition(concentrate.key(), carrier.key(), share.massFraction()),
                Optional.of(root),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                lower(concentrate.maxCelsius(), carrier.maxCelsius()),
                cautions,
                "",
                "made here",
                Optional.empty(),
                "A dilution for weighing small amounts. It is never sold.",
                Optional.empty(),
                Map.of());
    }

    /** The strength of a premix: so much of a raw material, by its name, as weighed. */
    public static Strength strength(PercentRange share, String of) {
        return new Strength(share, Strength.Basis.ASSAY_AS_IS, of);
    }

    /** Two parts that are opened in turn. */
    public static List<Constituent> composition(String concentrateKey, String carrierKey, double fraction) {
        return List.of(
                Constituent.exactly(CARD + concentrateKey, fraction),
                Constituent.exactly(CARD + carrierKey, 1 - fraction));
    }

    /** The recipe: the concentrate into the carrier, stirred until it is even. */
    public static Formula recipe(String concentrateKey, String carrierKey, Percent share) {
        return new Formula(List.of(new Phase(
                "premix",
                "Premix",
                List.of(
                        new Line(CARRIER, carrierKey, new Amount.ToHundred(), ""),
                        new Line(CONCENTRATE, concentrateKey, new Amount.Fixed(share), "")),
                List.of(new Step(
                        "even",
                        "Stir until it is even",
                        Optional.empty(),
                        "",
                        Optional.empty(),
                        "Clear or of one shade, nothing at the bottom.",
                        "")))));
    }

    private static Optional<Double> lower(Optional<Double> one, Optional<Double> other) {
        return one.isPresent() && other.isPresent()
                ? Optional.of(Math.min(one.get(), other.get()))
                : one.or(() -> other);
    }
}
