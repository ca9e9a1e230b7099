package stillroom.ledger;

import java.nio.file.Path;
import java.util.function.Supplier;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.formula.ProductShelf;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.material.MaterialShelf;
import stillroom.ledger.workshop.Equipment;
import stillroom.ledger.workshop.Settings;

/** The workshop's memory: one folder, one file. Safe to use from many threads. */
public final class Ledger implements AutoCloseable {
    private Ledger() {}

    /**
     * Opens the workshop in a folder, creating both where there is none.
     *
     * @param starter the starter library, asked for when first needed
     * @throws stillroom.ledger.store.LedgerException with one sentence where the folder cannot be written, another copy
     *     uses it, or the file is damaged or from a newer version; nothing is changed then
     */
    public static Ledger open(Path folder, Supplier<? extends MaterialBook> starter) {
        throw new UnsupportedOperationException();
    }

    public Settings settings() {
        throw new UnsupportedOperationException();
    }

    public Equipment equipment() {
        throw new UnsupportedOperationException();
    }

    public MaterialShelf materials() {
        throw new UnsupportedOperationException();
    }

    public LotBook lots() {
        throw new UnsupportedOperationException();
    }

    public ProductShelf products() {
        throw new UnsupportedOperationException();
    }

    public BatchBook batches() {
        throw new UnsupportedOperationException();
    }

    /** Several changes as one: all are stored, or none where the work throws. */
    public <T> T together(Supplier<T> work) {
        throw new UnsupportedOperationException();
    }

    /** Writes a consistent copy of everything to a new file while work goes on. */
    public void backupTo(Path file) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void close() {}
}
