package stillroom.formulary.plan;

import java.util.List;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * One line of a plan.
 *
 * @param asked the exact percentage of the formula (q.s. lines resolved)
 * @param target what to weigh, a whole number of steps of its balance; only the line that takes the residue may differ
 *     from that, so that the sum is exact [g]
 * @param tolerance how far the real weight may be off in either direction [g]
 * @param toReading whether it is added at the end up to a reading: the target is then only expected
 * @param lots what to take from which lot, first expired first; may cover less than the target
 * @param advice what to think of before weighing (below the minimum weight, expired lot ...)
 */
public record PlannedLine(
        String lineId,
        String phaseId,
        String materialKey,
        Percent asked,
        Grams target,
        Grams tolerance,
        boolean toReading,
        String balance,
        List<LotShare> lots,
        List<Advice> advice) {
    public PlannedLine {
        lots = List.copyOf(lots);
        advice = List.copyOf(advice);
    }

    /** The same line with another target; what was advised for the former one no longer holds. */
    public PlannedLine withTarget(Grams other, Grams tolerated) {
        return new PlannedLine(
                lineId, phaseId, materialKey, asked, other, tolerated, toReading, balance, lots, List.of());
    }

    /** So much from that lot. */
    public record LotShare(String lotCode, Grams mass) {}

    /**
     * One sentence for the person at the balance.
     *
     * @param choices what would mend it, one sentence each; empty where nothing needs mending
     * @param refuses whether the plan should not be worked like this (a legal limit or a preservative's minimum at stake)
     */
    public record Advice(String says, List<String> choices, boolean refuses) {
        public Advice {
            choices = List.copyOf(choices);
        }
    }

    /** The percentage that the target really is of the batch, to 12 significant digits [%]. */
    public Percent planned(Grams batch) {
        return Percent.share(target, batch);
    }
}
