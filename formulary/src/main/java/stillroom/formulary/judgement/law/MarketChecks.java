package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;

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
}
