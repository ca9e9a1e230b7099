package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;

/** Opposite charges that meet. */
final class ChargeChecks {
    /** Below this a charged substance is a trace from a raw material. */
    private static final double TRACE = 0.001;

    private static final double POLYMER_TRACE = 0.0011;

    private ChargeChecks() {}

    static void surfactants(Pot pot, Consumer<Finding> report) {
        List<Share> anionic = charged(pot, ChargeClass.ANIONIC);
        List<Share> cationic = charged(pot, ChargeClass.CATIONIC);
        if (anionic.isEmpty() || cationic.isEmpty()) {
            return;
        }
        List<Share> both = new ArrayList<>(anionic);
        both.addAll(cationic);
        report.accept(Note.fault("charge.anionic-cationic", both)
                .says(
                        "Anionic " + Note.names(anionic) + " and cationic " + Note.names(cationic)
                                + " bind each other; the mixture can cloud, separate and lose both effects.",
                        "Use non-ionic or amphoteric partners instead of one of them."));
    }

    private static List<Share> charged(Pot pot, ChargeClass charge) {
        return pot.where(share -> share.isIngredient()
                && share.isSurfactant(charge)
                && share.nominal() >= TRACE
                && !isPreservative(pot, share));
    }

    /** A cationic preservative has its own finding: it is lost as such, however little of it there is. */
    private static boolean isPreservative(Pot pot, Share share) {
        return share.is("preservative-annex-v") && pot.broughtBy(Family.PRESERVATIVE, share);
    }

    static void polymers(Pot pot, Consumer<Finding> report) {
        meet(
                pot,
                charged(pot, ChargeClass.CATIONIC),
                polymers(pot, "anionic-polymer"),
                true,
                "Cationic %s and the anionic polymer %s bind each other; thickening and conditioning suffer.",
                report);
        meet(
                pot,
                polymers(pot, "cationic-polymer"),
                polymers(pot, "anionic-polymer"),
                true,
                "The cationic polymer %s and the anionic polymer %s bind each other.",
                report);
        meet(
                pot,
                polymers(pot, "cationic-polymer"),
                charged(pot, ChargeClass.ANIONIC),
                false,
                "The cationic polymer %s and the anionic surfactant %s form a complex; in a shampoo that may be meant.",
                report);
    }

    /** Polymers in more than the tenth of a percent in which they only moisten or film. */
    private static List<Share> polymers(Pot pot, String tag) {
        List<Share> polymers = pot.where(share -> share.isIngredient() && share.is(tag) && !isPreservative(pot, share));
        return Pot.sum(polymers) > POLYMER_TRACE ? polymers : List.of();
    }

    private static void meet(
            Pot pot, List<Share> plus, List<Share> minus, boolean fault, String says, Consumer<Finding> report) {
        if (plus.isEmpty() || minus.isEmpty()) {
            return;
        }
        List<Share> both = new ArrayList<>(plus);
        both.addAll(minus);
        report.accept(Note.of(fault, "charge.polymer", both)
                .says(
                        String.format(says, Note.names(plus), Note.names(minus)),
                        fault ? "Use a non-ionic polymer, or leave one out." : "Check clarity over days."));
    }
}
