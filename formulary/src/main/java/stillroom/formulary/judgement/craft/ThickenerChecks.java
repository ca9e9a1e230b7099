package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;

/** Thickeners and what breaks them. */
final class ThickenerChecks {
    private static final double FAULT = 0.005;
    private static final double LOOK = 0.003;

    private ThickenerChecks() {}

    static void electrolyte(Pot pot, Consumer<Finding> report) {
        List<Share> carbomers = pot.ingredients("carbomer-like");
        List<Share> salts = pot.where(share -> share.is("electrolyte"));
        double salt = Pot.sum(salts);
        if (carbomers.isEmpty() || salt < LOOK) {
            return;
        }
        List<Share> both = new ArrayList<>(carbomers);
        both.addAll(salts);
        report.accept(Note.of(salt >= FAULT, "thickener.electrolyte", both)
                .says(
                        Note.names(carbomers) + " thins with electrolyte; " + Note.names(salts) + " make "
                                + Words.percent(salt) + ".",
                        "Use a thickener that stands salt, or take salt out."));
    }

    static void calcium(Pot pot, Consumer<Finding> report) {
        List<Share> alginates = pot.ingredients("alginate");
        List<Share> calcium = pot.where(share -> share.is("calcium-source"));
        if (alginates.isEmpty() || calcium.isEmpty()) {
            return;
        }
        List<Share> both = new ArrayList<>(alginates);
        both.addAll(calcium);
        report.accept(Note.fault("thickener.alginate-calcium", both)
                .says(
                        Note.names(alginates) + " gels in lumps with calcium from " + Note.names(calcium) + ".",
                        "Leave one out, or bind the calcium with a chelator first."));
    }
}
