package stillroom.ledger.batch;

import java.time.Instant;
import java.util.Optional;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchStage;

/**
 * A batch as lists show it.
 *
 * @param due when the next look at it is due: end of the rest that it is in
 * @param entries how many entries its log holds
 * @param lastAt time of the newest entry; none while the log is empty
 */
public record BatchRow(
        Batch batch,
        String productName,
        BatchStage stage,
        Optional<Instant> due,
        int entries,
        Optional<Instant> lastAt) {}
