package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;

/** Do the lines add up. */
final class BalanceChecks {
    /** Half of the last of two decimals: what a percent formula is usually written to [%]. */
    private static final double TOLERANCE_PERCENT = 0.005;

    private BalanceChecks() {}

    static void total(Pot pot, Consumer<Finding> report) {
        Figure total = pot.figures().totalPercent();
        double off = total.value() - 100;
        boolean saidAlready = pot.subject().found().stream()
                .anyMatch(finding -> finding.rule().equals("balance.nothing-left"));
        if (pot.items().isEmpty() || saidAlready || Math.abs(off) <= TOLERANCE_PERCENT) {
            return;
        }
        report.accept(new Finding(
                Finding.Kind.PROBABLE_FAULT,
                "balance.total",
                CraftChecks.PRACTICE,
                List.of(),
                List.of(total),
                "The lines add up to " + Words.figure(total.value()) + " %, not to 100 %.",
                off > 0
                        ? "Take out " + Words.figure(off) + " %."
                        : "Add " + Words.figure(-off) + " %, or make one line q.s. to 100."));
    }
}
