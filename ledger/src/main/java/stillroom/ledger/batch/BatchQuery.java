package stillroom.ledger.batch;

import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchStage;

/**
 * Which batches to list.
 *
 * @param stages any of these; empty means all
 * @param productId only of this product
 * @param codeBegins only codes that begin so; empty means all
 */
public record BatchQuery(Set<BatchStage> stages, Optional<Long> productId, String codeBegins) {
    public static final BatchQuery ALL = new BatchQuery(Set.of(), Optional.empty(), "");

    public BatchQuery {
        stages = Set.copyOf(stages);
    }
}
