package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.WarningText;

/** What the label must say because of what is in the product; the label itself prints it. */
final class WarningDuties {
    private WarningDuties() {}

    static void warnings(Pot pot, Consumer<Finding> report) {
        for (Applying applying : Applying.on(pot, pot.asOf())) {
            Rule rule = applying.rule();
            if (!rule.demand().warnings().isEmpty() && applying.demandsWarning(pot)) {
                report.accept(new Finding(
                        Finding.Kind.STANDING_DUTY,
                        "law.label-warning",
                        rule.citation().words(),
                        Pot.lines(applying.shares()),
                        List.of(),
                        "The label must say " + quoted(rule, pot) + ", for "
                                + Words.list(Pot.names(applying.shares())) + " (" + rule.id() + ")."
                                + (rule.isRead() ? "" : " This row was not read in the legal text: check it there."),
                        rule.note().isEmpty() ? "The label sheet prints it." : rule.note()));
            }
        }
    }

    private static String quoted(Rule rule, Pot pot) {
        return rule.demand().warnings().stream()
                .map(key -> "\""
                        + pot.rules().warning(key, "en").map(WarningText::text).orElse(key) + "\"")
                .collect(Collectors.joining(" and "));
    }
}
