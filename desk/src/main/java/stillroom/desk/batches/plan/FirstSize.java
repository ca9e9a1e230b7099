package stillroom.desk.batches.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;

/** The size that stands in the form at first: that of the product's last batch, else a beaker's worth. */
final class FirstSize {
    private static final Grams BEAKER = Grams.of("500");

    private FirstSize() {}

    static Input of(PlanDesk plan) {
        Map<String, String> form = new HashMap<>();
        form.put("by", "mass");
        form.put("mass", lastBatch(plan).orElse(BEAKER).toString());
        return Input.of(form);
    }

    private static Optional<Grams> lastBatch(PlanDesk plan) {
        Ledger ledger = plan.desk().ledger();
        BatchQuery ofProduct = new BatchQuery(
                BatchQuery.ALL.stages(), Optional.of(plan.product().id()), "");
        return ledger.batches().page(ofProduct, 0, 1).rows().stream()
                .findFirst()
                .map(BatchRow::batch)
                .flatMap(batch -> ledger.batches().log(batch.id()).stream()
                        .map(LogEntry::event)
                        .filter(BatchEvent.Planned.class::isInstance)
                        .map(event -> ((BatchEvent.Planned) event).plan().batch())
                        .findFirst());
    }
}
