package stillroom.ledger.backup;

import java.nio.file.Path;

/** Bringing back a copy. */
public final class Restore {
    private Restore() {}

    /**
     * Puts a copy in the place of the workshop in a folder. What stood there is kept beside it under another name.
     *
     * @return where the former file now lies, or the folder itself where there was none
     * @throws stillroom.ledger.store.LedgerException where the copy is not sound or the folder is in use; nothing is
     *     changed then
     */
    public static Path restore(Path copy, Path folder) {
        throw new UnsupportedOperationException();
    }
}
