package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Substance;

/** Oil and water need something between them. */
final class EmulsionChecks {
    private static final double OIL_PHASE = 0.01;
    private static final double WATER_PHASE = 0.10;
    /** Water that a balm of oils and waxes can neither dissolve nor hold. */
    private static final double WATER_IN_BALM = 0.02;

    private static final double MOSTLY_OIL = 0.5;
    /** Powder that takes up a little water, as in a paste. */
    private static final double POWDER = 0.05;
    /** Fatty alcohol that builds a network with a hydrophilic emulsifier, where HLB does not decide. */
    private static final double NETWORK = 0.005;

    /** Fatty acid that makes soap enough to emulsify with. */
    private static final double SOAP = 0.005;
    /** Perfume above this in plain water clouds or floats. */
    private static final double PERFUME = 0.001;

    private EmulsionChecks() {}

    static void emulsifier(Pot pot, Consumer<Finding> report) {
        List<Share> oils = Emulsion.oils(pot.shares());
        if (Pot.sum(oils) < OIL_PHASE
                || !isTwoPhases(pot, oils)
                || !between(pot).isEmpty()
                || makesSoap(pot)) {
            return;
        }
        // A remover of two layers is shaken before use and wants no emulsifier.
        boolean layers = pot.brief().type() == ProductType.MAKE_UP_REMOVER;
        report.accept(Note.of(pot.isFullyKnown() && !layers, "emulsion.no-emulsifier", oils)
                .says(
                        "An oil phase of " + Words.percent(Pot.sum(oils)) + " and " + Words.percent(pot.waterFraction())
                                + " water stand without an emulsifier" + Note.asFarAsKnown(pot) + ".",
                        "Add an emulsifier, or leave out the oil or the water."));
    }

    private static boolean isTwoPhases(Pot pot, List<Share> oils) {
        boolean balm = Pot.sum(oils) >= MOSTLY_OIL
                && pot.waterFraction() >= WATER_IN_BALM
                && Pot.sum(pot.ingredients("powder")) + Pot.sum(pot.ingredients("clay")) < POWDER;
        return balm || pot.waterFraction() >= WATER_PHASE;
    }

    /** Fatty acid and base make the emulsifier in the pot, as in a stearate cream. */
    private static boolean makesSoap(Pot pot) {
        boolean acid = Pot.sum(pot.ingredients("fatty-acid")) >= SOAP;
        boolean base = pot.items().stream().anyMatch(item -> item.is(Family.BASE))
                || !pot.ingredients("amine").isEmpty();
        return acid && base;
    }

    static void perfume(Pot pot, Consumer<Finding> report) {
        List<Share> perfume =
                pot.where(share -> share.isIngredient() && (share.is("fragrance") || share.is("essential-oil")));
        boolean alcoholic = Pot.sum(pot.ingredients("alcohol")) >= 0.3;
        if (Pot.sum(perfume) >= PERFUME
                && pot.waterFraction() >= 0.5
                && !alcoholic
                && between(pot).isEmpty()
                && Pot.sum(Emulsion.oils(pot.shares())) < OIL_PHASE) {
            report.accept(Note.look("emulsion.perfume-in-water", perfume)
                    .says(
                            "Perfume at " + Words.percent(Pot.sum(perfume)) + " stands in water without a solubiliser.",
                            "Mix it into a solubiliser first."));
        }
    }

    /** Whatever can stand between oil and water. */
    private static List<Share> between(Pot pot) {
        return pot.where(share -> share.isIngredient()
                && (share.is("emulsifier")
                        || share.substance().map(Substance::surfactant).orElse(false)));
    }

    /** The emulsifiers' HLB beside what the oils ask, where both are known; a rule of thumb, so a look at most. */
    static void hlb(Pot pot, Consumer<Finding> report) {
        Optional<Figure> has = figure(pot, "HLB of the emulsifiers");
        Optional<Figure> asked = figure(pot, "Required HLB of the oils");
        double oil = Pot.sum(Emulsion.oils(pot.shares()));
        if (has.isEmpty() || asked.isEmpty() || oil < 0.03 || pot.waterFraction() < 0.3) {
            return;
        }
        double off = has.get().value() < asked.get().low()
                ? asked.get().low() - has.get().value()
                : has.get().value() - asked.get().high();
        boolean network =
                has.get().value() > asked.get().high() && Pot.sum(pot.ingredients("fatty-alcohol")) >= NETWORK;
        if (off > 2 && !network) {
            report.accept(new Finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "emulsion.hlb",
                    "Griffin 1949, 1954, from memory; a rule of thumb",
                    new ArrayList<>(Pot.lines(between(pot))),
                    List.of(has.get(), asked.get()),
                    "The emulsifiers' HLB of about " + Words.figure(has.get().value())
                            + " is far from the oils' required "
                            + Words.figure(asked.get().value()) + ".",
                    "Shift the pair of emulsifiers; a beaker decides, not the figure."));
        }
    }

    private static Optional<Figure> figure(Pot pot, String name) {
        return pot.figures().others().stream()
                .filter(figure -> figure.name().equals(name))
                .findFirst();
    }
}
