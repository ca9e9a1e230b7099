package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;

/** Metal traces from plants. */
final class ChelatorChecks {
    private static final double MAIN_PART = 0.2;

    private ChelatorChecks() {}

    static void extracts(Pot pot, Consumer<Finding> report) {
        List<Share> extracts = pot.ingredients("natural-extract");
        boolean chelated = pot.items().stream().anyMatch(item -> isChelator(pot, item));
        if (!extracts.isEmpty() && pot.waterFraction() >= 0.1 && !chelated) {
            report.accept(Note.look("chelator.extracts", extracts)
                    .says(
                            Note.names(extracts) + " can bring metals; no chelator stands beside "
                                    + (extracts.size() == 1 ? "it." : "them."),
                            "Add a chelator to the water before the extract."));
        }
    }

    /** An acid that sets the pH is spent on that, and a trace in an extract is too little. */
    private static boolean isChelator(Pot pot, Item item) {
        return !item.is(Family.ACID)
                && item.material().stream()
                        .flatMap(card -> card.composition().stream())
                        .filter(part -> part.massFraction().nominal() >= MAIN_PART)
                        .flatMap(part -> pot.book().substance(part.substance()).stream())
                        .anyMatch(substance -> substance.is("chelator"));
    }
}
