package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;

/** Metal traces from plants. */
final class ChelatorChecks {
    private ChelatorChecks() {}

    static void extracts(Pot pot, Consumer<Finding> report) {
        List<Share> extracts = pot.ingredients("natural-extract");
        if (!extracts.isEmpty()
                && pot.waterFraction() >= 0.1
                && pot.ingredients("chelator").isEmpty()) {
            report.accept(Note.look("chelator.extracts", extracts)
                    .says(
                            Note.names(extracts) + " can bring metals; no chelator stands beside "
                                    + (extracts.size() == 1 ? "it." : "them."),
                            "Add a chelator to the water before the extract."));
        }
    }
}
