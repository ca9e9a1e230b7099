package stillroom.formulary.plan;

import java.util.List;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.plan.PlannedLine.LotShare;

/** What one line takes from the shelf, and what is to be said about it. */
record LotPick(List<LotShare> lots, List<Advice> advice) {
    LotPick {
        lots = List.copyOf(lots);
        advice = List.copyOf(advice);
    }
}
