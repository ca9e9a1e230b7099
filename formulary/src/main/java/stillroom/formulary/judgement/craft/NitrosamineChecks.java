package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;

/** Amines beside what can nitrosate them. */
final class NitrosamineChecks {
    private NitrosamineChecks() {}

    static void secondaryAmines(Pot pot, Consumer<Finding> report) {
        List<Share> agents = pot.where(share -> share.is("nitrosating-agent"));
        List<Share> amines = pot.where(share -> share.is("secondary-amine") || share.is("amine"));
        if (agents.isEmpty() || amines.isEmpty()) {
            return;
        }
        List<Share> both = new ArrayList<>(amines);
        both.addAll(agents);
        report.accept(Note.fault("nitrosamine.risk", both)
                .says(
                        Note.names(amines) + " beside " + Note.names(agents)
                                + " can form nitrosamines, which cause cancer.",
                        "Take out the nitrosating material, or the amine."));
    }
}
