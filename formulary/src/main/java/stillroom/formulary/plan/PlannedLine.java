package stillroom.formulary.plan;

import java.util.List;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * One line of a plan.
 *
 * @param asked the exact percentage of the formula (q.s. lines resolved)
 * @param target what to weigh, a whole number of balance steps [g]
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

    /** So much from that lot. */
    public record LotShare(String lotCode, Grams mass) {}

    /**
     * One sentence for the person at the balance.
     *
     * @param refuses whether the plan should not be worked like this (a legal limit or a preservative's minimum at stake)
     */
    public record Advice(String says, boolean refuses) {}
}
