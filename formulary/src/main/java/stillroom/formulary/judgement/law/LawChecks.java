package stillroom.formulary.judgement.law;

import java.util.List;
import stillroom.formulary.judgement.pot.Check;

/** All checks against the rule tables of the product's market. */
public final class LawChecks {
    private LawChecks() {}

    public static List<Check> all() {
        return List.of(
                MarketChecks::known,
                MarketChecks::unread,
                RowChecks::rows,
                ListChecks::preservatives,
                ListChecks::colourants,
                ListChecks::filters,
                ClaimChecks::claims,
                WarningDuties::warnings,
                DutyChecks::duties,
                MarketChecks::coverage);
    }
}
