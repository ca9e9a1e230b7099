package stillroom.ledger.trace;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.concern.Concerns;
import stillroom.formulary.concern.Units;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.lot.StockedLot;

/**
 * All that a trace found.
 *
 * @param lots on the shelf: those that it began with, and those made from them or from a batch that was reached
 * @param batches newest first
 */
public record Reach(List<ReachedLot> lots, List<ReachedBatch> batches) {
    public Reach {
        lots = List.copyOf(lots);
        batches = List.copyOf(batches);
    }

    /**
     * One lot.
     *
     * @param stocked none where only its code stands in a log
     * @param made whether it was made here, out of something that was reached
     */
    public record ReachedLot(String code, Optional<StockedLot> stocked, boolean made) {}

    /**
     * One batch.
     *
     * @param direct poured of the lots that were reached, net of what was taken back; zero where it came another way [g]
     * @param units where its containers are
     */
    public record ReachedBatch(BatchRow row, Grams direct, Units units, Concerns concerns) {}
}
