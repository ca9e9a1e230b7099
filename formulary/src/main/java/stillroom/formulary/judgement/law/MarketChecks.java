package stillroom.formulary.judgement.law;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.rule.Rule;

/** Whether there is law on record for the market at all. */
final class MarketChecks {
    private MarketChecks() {}

    static void known(Pot pot, Consumer<Finding> report) {
        String market = pot.brief().market();
        if (pot.rules().law(market).isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "law.market",
                    "no rule table",
                    List.of(),
                    List.of(),
                    "No rule tables are recorded for the market \"" + market + "\".",
                    "Choose a market on record, or add its tables."));
        }
    }

    /** The day of the record, and what it leaves out: said with every judgement. */
    static void coverage(Pot pot, Consumer<Finding> report) {
        String market = pot.brief().market();
        String left = pot.rules().notCovered().getOrDefault(market, "");
        if (pot.items().isEmpty() || pot.rules().law(market).isEmpty() || left.isEmpty()) {
            return;
        }
        report.accept(new Finding(
                Finding.Kind.STANDING_DUTY,
                "law.coverage",
                "rule tables of " + market,
                List.of(),
                List.of(),
                "Law of " + market + " as recorded on " + pot.rules().recordedOn(market) + ", asked for " + pot.asOf()
                        + ". Not covered: " + left + ".",
                "Silence of the tables means nothing there: ask the safety assessor and the law itself."));
    }

    /** Rows from memory that name something in the product: their silence is no "within the limit". */
    static void unread(Pot pot, Consumer<Finding> report) {
        Set<String> names = new LinkedHashSet<>();
        Set<String> lines = new LinkedHashSet<>();
        int rows = 0;
        for (Applying applying : Applying.on(pot, pot.asOf())) {
            Rule rule = applying.rule();
            boolean silent = rule.kind() == Rule.Kind.LIMIT || rule.kind() == Rule.Kind.LISTED;
            if (silent && !rule.isRead() && RowChecks.judge(applying, pot).isEmpty()) {
                rows++;
                names.addAll(Pot.names(applying.shares()));
                lines.addAll(Pot.lines(applying.shares()));
            }
        }
        if (rows > 0) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "law.unread",
                    "rule tables of " + pot.brief().market(),
                    List.copyOf(lines),
                    List.of(),
                    "Cannot judge: " + rows + (rows == 1 ? " row" : " rows") + " of the record of "
                            + pot.brief().market() + " on " + Words.list(List.copyOf(names))
                            + (rows == 1 ? " was" : " were") + " not read in the legal text; nothing is said by them.",
                    "Look these up in the law of the place of sale."));
        }
    }
}
