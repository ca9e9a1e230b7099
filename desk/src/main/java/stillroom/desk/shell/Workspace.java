package stillroom.desk.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Supplier;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.LedgerException;

/** The open data folder. The ledger in it can be set aside for a new, empty one while the program runs. Thread-safe. */
public final class Workspace implements AutoCloseable {
    private static final String FILE = "stillroom.db";

    private final Path folder;
    private final Supplier<? extends MaterialBook> starter;
    private volatile Ledger ledger;

    private Workspace(Path folder, Supplier<? extends MaterialBook> starter) {
        this.folder = folder;
        this.starter = starter;
        this.ledger = Ledger.open(folder, starter);
    }

    /**
     * Opens the workshop in a folder.
     *
     * @throws LedgerException with one sentence where that does not go
     */
    public static Workspace open(Path folder, Supplier<? extends MaterialBook> starter) {
        return new Workspace(folder.toAbsolutePath().normalize(), starter);
    }

    public Ledger ledger() {
        return ledger;
    }

    /** The library that every workshop begins with. */
    public MaterialBook starter() {
        return starter.get();
    }

    public Path folder() {
        return folder;
    }

    /** Sets the ledger aside under another name in the same folder and begins an empty one. */
    public synchronized Path beginAfresh(Instant now) {
        Path aside = folder.resolve("set-aside-" + now.getEpochSecond() + ".db");
        ledger.close();
        try {
            Files.move(folder.resolve(FILE), aside);
        } catch (IOException stuck) {
            throw new LedgerException("The present workshop could not be set aside: " + stuck.getMessage(), stuck);
        } finally {
            ledger = Ledger.open(folder, starter);
        }
        return aside;
    }

    /**
     * Puts a copy in the place of the open ledger; what stood there stays beside it under another name.
     *
     * @throws LedgerException where the copy is not sound; the ledger goes on as it was
     */
    public synchronized void putBack(Path copy) {
        ledger.close();
        try {
            Ledger.restore(copy, folder);
        } finally {
            ledger = Ledger.open(folder, starter);
        }
    }

    @Override
    public void close() {
        ledger.close();
    }
}
