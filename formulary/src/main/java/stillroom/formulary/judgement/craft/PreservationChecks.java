package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.MarketLaw;
import stillroom.formulary.rule.Rule;

/** Whether anything keeps the water; never whether that is enough, which only a challenge test shows. */
final class PreservationChecks {
    /** Below this there is no water phase in which something grows, only moisture of raw materials. */
    private static final double WATER_PHASE = 0.03;
    /** Between the two a solid bar or paste may keep by its dryness: worth a look, no fault yet. */
    private static final double CLEARLY_WET = 0.10;
    /** A tenth of the legal maximum: less is what an extract brought along. */
    private static final double TRACE_OF_LIMIT = 0.1;

    private static final double HURDLE_WATER_ACTIVITY = 0.75;
    private static final double HURDLE_ALCOHOL = 0.16;
    /** Below this share anionic matter binds too little of a preservative to matter. */
    private static final double ANIONIC = 0.0005;
    /** Below this share of water there is no water phase. */
    private static final double DRY = 0.01;

    /** Cationic in water though recorded as salts without a charge of their own. */
    private static final List<String> CATIONIC_SALTS = List.of(
            "chlorhexidine",
            "chlorhexidine-digluconate",
            "chlorhexidine-diacetate",
            "chlorhexidine-dihydrochloride",
            "hexamidine",
            "hexamidine-diisethionate",
            "polyaminopropyl-biguanide");

    /** Usual least level of such an agent where its card says nothing. */
    private static final double LEVEL = 0.003;

    private PreservationChecks() {}

    static void present(Pot pot, Consumer<Finding> report) {
        double water = pot.freeWaterFraction();
        if (water < WATER_PHASE) {
            return;
        }
        List<Share> preservatives = pot.where(share -> preserves(pot, share));
        double dose =
                preservatives.stream().mapToDouble(share -> ofLimit(pot, share)).sum();
        if (dose >= TRACE_OF_LIMIT) {
            return;
        }
        List<Share> boosters = pot.ingredients("preservative-booster");
        Optional<String> hurdle = hurdle(pot);
        String lead = preservatives.isEmpty()
                ? "Nothing preserves the water phase of " + Words.percent(water)
                : "Only traces of a preservative (" + Note.names(preservatives) + ") stand in a water phase of "
                        + Words.percent(water);
        String boosted = boosters.isEmpty()
                ? ""
                : " " + Note.names(boosters) + (boosters.size() == 1 ? " is" : " are")
                        + " not on the legal list of preservatives and not counted.";
        List<Share> named = new ArrayList<>(preservatives);
        named.addAll(boosters);
        report.accept(Note.of(
                        hurdle.isEmpty() && pot.isFullyKnown() && water >= CLEARLY_WET && !isKeptByOthers(pot),
                        "preservation.missing",
                        named)
                .says(
                        lead + Note.asFarAsKnown(pot) + "."
                                + hurdle.map(words -> " " + words).orElse("") + boosted,
                        "Choose a preservative that works at the product's pH, and have a challenge test made."));
    }

    /**
     * At least two agents that stand in no legal list, each at its usual level: a way of its own that only a challenge
     * test can confirm, but no oversight.
     */
    private static boolean isKeptByOthers(Pot pot) {
        return pot.items().stream()
                        .filter(PreservationChecks::isAtItsLevel)
                        .flatMap(item -> Opened.parts(item.material(), pot.book()).stream())
                        .flatMap(part -> pot.book().substance(part.substance()).stream())
                        .filter(substance -> substance.is("preservative-booster"))
                        .distinct()
                        .count()
                >= 2;
    }

    private static boolean isAtItsLevel(Item item) {
        double share = item.portion().share().nominal();
        return item.material()
                .flatMap(Material::usage)
                .map(usage -> share >= usage.low().massFraction())
                .orElse(share >= LEVEL);
    }

    /** A cationic conditioner is on the list of preservatives too, but is not there to preserve. */
    private static boolean preserves(Pot pot, Share share) {
        boolean surfactant = share.substance().map(Substance::surfactant).orElse(false);
        return share.isIngredient()
                && share.is("preservative-annex-v")
                && (!surfactant || pot.broughtBy(Family.PRESERVATIVE, share));
    }

    /** How far a share goes towards a legal maximum: of its market, else of the European list, else of 0.5 %. */
    private static double ofLimit(Pot pot, Share share) {
        return Stream.of(pot.brief().market(), "EU")
                .flatMap(market -> ofLimit(pot, share, market).stream())
                .findFirst()
                .orElse(share.nominal() * 100 / 0.5);
    }

    private static Optional<Double> ofLimit(Pot pot, Share share, String market) {
        return pot.rules().law(market).stream()
                .flatMap(law -> limits(law, share, pot))
                .map(percent -> share.nominal() * 100 / percent)
                .max(Double::compare);
    }

    private static Stream<Double> limits(MarketLaw law, Share share, Pot pot) {
        return law.naming(share.key()).stream()
                .filter(rule -> rule.table().equals("annex-v") && rule.span().countsOn(pot.asOf()))
                .filter(rule -> rule.kind() == Rule.Kind.LIMIT)
                .flatMap(rule -> rule.limit().percent().stream());
    }

    /** Soap enough to make its alkaline water hostile. */
    private static final double SOAP = 0.05;

    private static final List<String> SOAPS = List.of("potassium-cocoate", "potassium-oleate", "sodium-cocoate");

    private static boolean isLiquidSoap(Pot pot, Interval ph) {
        return ph.low() >= 9 && Pot.sum(pot.where(share -> share.isIngredient() && share.isNamedBy(SOAPS))) >= SOAP;
    }

    /** A condition in which hardly anything grows. Source: ISO 29621 low-risk marks, from memory. */
    private static Optional<String> hurdle(Pot pot) {
        Optional<Figure> activity = pot.figures().others().stream()
                .filter(figure -> figure.name().equals("Water activity"))
                .filter(figure -> figure.high() <= HURDLE_WATER_ACTIVITY)
                .findFirst();
        if (activity.isPresent()) {
            return Optional.of(
                    "The water activity of about " + Words.figure(activity.get().value()) + " is a hurdle of its own.");
        }
        double alcohol = Pot.sum(pot.ingredients("alcohol"));
        if (alcohol >= HURDLE_ALCOHOL) {
            return Optional.of("Alcohol at " + Words.percent(alcohol) + " is a hurdle of its own.");
        }
        Optional<Interval> ph = pot.workingPh();
        return ph.filter(band -> band.high() <= 3.0 || band.low() >= 10.0 || isLiquidSoap(pot, band))
                .map(band -> "pH " + PhChecks.span(band) + " is a hurdle of its own.");
    }

    /** Cationic preservatives are held fast by anionic matter and then do not act. */
    static void cationic(Pot pot, Consumer<Finding> report) {
        List<Share> cationic = pot.where(share -> share.isIngredient()
                && share.is("preservative-annex-v")
                && (share.hasCharge(ChargeClass.CATIONIC) || share.isNamedBy(CATIONIC_SALTS))
                && pot.broughtBy(Family.PRESERVATIVE, share));
        List<Share> anionic = pot.where(share -> share.isIngredient()
                && (share.isSurfactant(ChargeClass.ANIONIC) || share.is("anionic-polymer"))
                && share.nominal() >= ANIONIC);
        if (cationic.isEmpty() || anionic.isEmpty()) {
            return;
        }
        List<Share> both = new ArrayList<>(cationic);
        both.addAll(anionic);
        report.accept(Note.fault("preservation.cationic-anionic", both)
                .says(
                        "The cationic preservative " + Note.names(cationic) + " is bound by the anionic "
                                + Note.names(anionic) + " and then does not act.",
                        "Use another preservative, or non-ionic partners."));
    }

    /** In a product without water nothing grows, and a preservative is not where it could act. */
    static void withoutWater(Pot pot, Consumer<Finding> report) {
        List<Share> preservatives = pot.where(share -> preserves(pot, share));
        List<Share> onPurpose = preservatives.stream()
                .filter(share -> pot.broughtBy(Family.PRESERVATIVE, share))
                .toList();
        boolean dry =
                pot.waterFraction() < DRY && pot.isFullyKnown() && !pot.items().isEmpty();
        if (dry && !onPurpose.isEmpty()) {
            report.accept(Note.look("preservation.no-water", onPurpose)
                    .says(
                            Note.names(onPurpose) + " stands in a product without a water phase.",
                            "Leave it out, or note why: wet fingers and shower water reach some products."));
        }
    }

    /** Known losses of preservatives to other ingredients. */
    static void inactivated(Pot pot, Consumer<Finding> report) {
        List<Share> parabens = pot.ingredients("paraben");
        List<Share> ethoxylated = pot.ingredients("ethoxylated");
        if (!parabens.isEmpty() && Pot.sum(ethoxylated) >= 0.02) {
            List<Share> both = new ArrayList<>(parabens);
            both.addAll(ethoxylated);
            report.accept(Note.look("preservation.paraben-nonionic", both)
                    .says(
                            Note.names(ethoxylated) + " at " + Words.percent(Pot.sum(ethoxylated))
                                    + " can hold parabens in micelles, where they do not act.",
                            "Lower the ethoxylated emulsifier, or use another preservative."));
        }
    }
}
