package stillroom.desk.batches;

import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.Batch;
import stillroom.ledger.document.Drawer;

/** Which batches are made to be blended with each other. */
public record Blends(Desk desk) {
    /** The other of two. */
    public record Partner(long batchId, String code) {}

    private Drawer<Partner> drawer() {
        return desk.ledger().drawer("blend", Partner.class);
    }

    /** Notes it on both. */
    public void note(Batch one, Batch other) {
        drawer().write(Long.toString(one.id()), new Partner(other.id(), other.code()));
        drawer().write(Long.toString(other.id()), new Partner(one.id(), one.code()));
    }

    public Optional<Partner> of(long batchId) {
        return drawer().read(Long.toString(batchId));
    }
}
