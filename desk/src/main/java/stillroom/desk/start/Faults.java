package stillroom.desk.start;

import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import stillroom.ledger.store.LedgerException;

/** What stood in the way, in one sentence. */
final class Faults {
    private Faults() {}

    static String sentence(Exception fault) {
        if (fault instanceof LedgerException told) {
            return String.valueOf(told.getMessage());
        }
        if (fault instanceof UncheckedIOException wrapped && wrapped.getCause() != null) {
            return sentence(wrapped.getCause());
        }
        if (fault instanceof NoSuchFileException missing) {
            return "The file " + missing.getFile() + " is not there.";
        }
        if (fault instanceof AccessDeniedException denied) {
            return "The file " + denied.getFile() + " may not be opened.";
        }
        if (fault instanceof FileSystemException stuck) {
            return "The file " + stuck.getFile() + " cannot be used"
                    + (stuck.getReason() == null ? "." : ": " + stuck.getReason() + ".");
        }
        if (fault instanceof InvalidPathException path) {
            return "\"" + path.getInput() + "\" is no name of a file.";
        }
        return "Stillroom cannot go on: " + fault;
    }
}
