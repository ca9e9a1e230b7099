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
        List<Share> amines =
                pot.where(share -> (share.is("secondary-amine") || share.is("amine")) && !lawForbids(pot, share));
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

    /** Where a rule row of the market already forbids the pair, that row speaks. */
    private static boolean lawForbids(Pot pot, Share share) {
        return pot.rules().law(pot.brief().market()).stream()
                .flatMap(law -> law.naming(share.key()).stream())
                .anyMatch(rule -> rule.span().countsOn(pot.asOf())
                        && rule.limit().notWith().contains("nitrosating-agent"));
    }
}
