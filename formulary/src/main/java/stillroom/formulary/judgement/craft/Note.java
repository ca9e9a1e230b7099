package stillroom.formulary.judgement.craft;

import java.util.List;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;

/** A finding of common practice under way: what it concerns, and then its sentences. */
record Note(Finding.Kind kind, String rule, List<String> lines, List<Figure> compared) {
    static Note fault(String rule, List<Share> shares) {
        return new Note(Finding.Kind.PROBABLE_FAULT, rule, Pot.lines(shares), figures(shares));
    }

    static Note look(String rule, List<Share> shares) {
        return new Note(Finding.Kind.LOOK_AT_THIS, rule, Pot.lines(shares), figures(shares));
    }

    static Note of(boolean fault, String rule, List<Share> shares) {
        return fault ? fault(rule, shares) : look(rule, shares);
    }

    private static List<Figure> figures(List<Share> shares) {
        return shares.stream()
                .map(share -> new Figure(
                        share.name(),
                        share.amount().lower() * 100,
                        share.nominal() * 100,
                        share.amount().upper() * 100,
                        "%",
                        "in the pot, over all lines",
                        List.of()))
                .toList();
    }

    Finding says(String sentence, String mend) {
        return new Finding(kind, rule, CraftChecks.PRACTICE, lines, compared, sentence, mend);
    }

    /** What to say behind "there is none" where some cards say nothing: one of them may be it. */
    static String asFarAsKnown(Pot pot) {
        return pot.isFullyKnown()
                ? ""
                : ", as far as is known (no composition for " + Words.list(pot.unknownNames()) + ")";
    }

    static String names(List<Share> shares) {
        return Words.list(Pot.names(shares));
    }
}
