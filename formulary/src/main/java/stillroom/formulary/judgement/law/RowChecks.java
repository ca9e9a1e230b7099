package stillroom.formulary.judgement.law;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Limit;
import stillroom.formulary.rule.Rule;

/** Every rule row that names a substance of the product, held against it. */
final class RowChecks {
    /** How far ahead a coming rule is worth telling: batches made now are still on sale then. */
    private static final int MONTHS_AHEAD = 18;

    /** Before a key in {@code not_with}: forbidden only where another line brings it. */
    private static final String OTHER_LINE = "other-line:";

    private RowChecks() {}

    static void rows(Pot pot, Consumer<Finding> report) {
        Set<String> told = new LinkedHashSet<>();
        for (Applying applying : Applying.on(pot, pot.asOf())) {
            for (Finding finding : judge(applying, pot)) {
                told.add(finding.rule());
                report.accept(finding);
            }
        }
        for (Applying coming : Applying.comingAfter(pot, pot.asOf(), MONTHS_AHEAD)) {
            for (Finding finding : judge(coming, pot)) {
                if (!told.contains(finding.rule())) {
                    report.accept(RowFinding.coming(finding, coming.rule()));
                }
            }
        }
    }

    static List<Finding> judge(Applying applying, Pot pot) {
        List<Finding> findings = new ArrayList<>();
        Rule rule = applying.rule();
        switch (rule.kind()) {
            case PROHIBITED -> findings.add(RowFinding.prohibited(applying));
            case LIMIT, LISTED, GUIDANCE -> {
                people(applying, pot.brief()).ifPresent(findings::add);
                LimitJudgement.judge(applying, pot).forEach(findings::add);
                findings.addAll(acidity(applying, pot));
                company(applying, pot).ifPresent(findings::add);
            }
            case NOTICE -> findings.add(RowFinding.notice(applying));
            case ALLERGEN -> {
                // Names on a label, no finding: the label reads these rows itself.
            }
        }
        return findings;
    }

    private static Optional<Finding> people(Applying applying, Brief brief) {
        List<Brief.People> refused = applying.rule().scope().notFor().stream()
                .filter(brief.people()::contains)
                .sorted()
                .toList();
        return refused.isEmpty() ? Optional.empty() : Optional.of(RowFinding.people(applying, refused));
    }

    private static List<Finding> acidity(Applying applying, Pot pot) {
        Limit limit = applying.rule().limit();
        if (!limit.asksPh() || pot.waterFraction() <= 0) {
            return List.of();
        }
        if (pot.workingPh().isEmpty()) {
            return List.of(RowFinding.acidityUnknown(applying));
        }
        Interval ph = pot.workingPh().get();
        List<Finding> findings = new ArrayList<>();
        limit.phMax()
                .filter(most -> ph.high() > most)
                .ifPresent(most -> findings.add(RowFinding.tooHigh(applying, ph, most)));
        limit.phMin()
                .filter(least -> ph.low() < least)
                .ifPresent(least -> findings.add(RowFinding.tooLow(applying, ph, least)));
        return findings;
    }

    private static Optional<Finding> company(Applying applying, Pot pot) {
        List<Share> beside = pot.where(share -> applying.rule().limit().notWith().stream()
                .anyMatch(word ->
                        word.startsWith(OTHER_LINE) ? isElsewhere(applying, share, word) : isMeant(share, word)));
        return beside.isEmpty() ? Optional.empty() : Optional.of(RowFinding.company(applying, beside));
    }

    private static boolean isMeant(Share share, String word) {
        return share.is(word) || share.isNamedBy(List.of(word));
    }

    /** Whether the substance is in the product and the row's own comes from a line that does not bring it. */
    private static boolean isElsewhere(Applying applying, Share share, String word) {
        return share.isNamedBy(List.of(word.substring(OTHER_LINE.length())))
                && !share.lines().containsAll(Pot.lines(applying.shares()));
    }
}
