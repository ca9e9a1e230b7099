package stillroom.desk.batches.bulk;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.Bulk;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.quantity.Grams;

/** Hands a part of a bulk over: what one batch gives, the other gets with all that is in it, both or neither. */
record HandingOver(Desk desk, BatchWork work, Input input) {
    /** The batch that got it, or none where the form says why not. */
    Optional<Long> done() {
        Optional<Grams> mass = input.grams("mass", "The weight");
        if (mass.isEmpty() && !input.hasProblem("mass")) {
            input.refuse("mass", "How much is handed over?");
        }
        Optional<Vessel> from = work.state().vessel(input.text("vessel")).filter(Vessel::open);
        if (from.isEmpty()) {
            input.refuse("vessel", "Say out of which vessel.");
        }
        boolean anew = input.text("to").isEmpty();
        String vessel = anew ? input.required("newVessel", "The vessel of the new batch") : after("to", '/');
        String clean = anew ? input.required("clean", "How it was cleaned") : "";
        String code = anew ? input.required("code", "The code of the new batch") : "";
        if (!input.isSound()) {
            return Optional.empty();
        }
        return desk.ledger().together(() -> {
            Optional<Batch> to = anew ? opened(code) : desk.ledger().batches().byCode(before("to", '/'));
            if (to.isEmpty() || to.get().id() == work.batch().id()) {
                return input.refuse(
                        anew ? "code" : "to", anew ? "Another batch bears this code." : "This batch is not on file.");
            }
            LogPost.Outcome given = new LogPost(work, input)
                    .take(() -> Optional.of(new BatchEvent.HandedOver(
                            from.orElseThrow().name(),
                            mass.orElseThrow(),
                            to.get().code())));
            if (given.entry().isEmpty()) {
                // Nothing is kept of a batch that was opened for it.
                throw new Refused();
            }
            receive(to.get(), from.orElseThrow(), mass.orElseThrow(), vessel, clean);
            return Optional.of(to.get().id());
        });
    }

    /** Rolls back what was begun. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private String before(String field, char mark) {
        String text = input.text(field);
        int at = text.indexOf(mark);
        return at < 0 ? text : text.substring(0, at);
    }

    private String after(String field, char mark) {
        String text = input.text(field);
        return text.substring(text.indexOf(mark) + 1);
    }

    private Optional<Batch> opened(String code) {
        return desk.ledger().batches().open(work.product().id(), work.batch().version(), code, desk.today());
    }

    private void receive(Batch to, Vessel from, Grams mass, String vessel, String clean) {
        BatchEvent.BulkReceived bulk = Bulk.of(from, mass, work.batch().code(), vessel);
        boolean same = to.productId() == work.batch().productId()
                && to.version().equals(work.batch().version());
        BatchEvent.BulkReceived comes = same ? bulk : Bulk.withoutLines(bulk);
        if (!clean.isEmpty()) {
            append(
                    to,
                    "ready",
                    new BatchEvent.VesselReady(vessel, Optional.empty(), Optional.empty(), clean, List.of()));
        }
        append(to, "bulk", comes);
    }

    private void append(Batch to, String what, BatchEvent event) {
        desk.ledger()
                .batches()
                .append(to.id(), what + "-" + input.text("requestId"), desk.now(), input.text("by"), event);
    }
}
