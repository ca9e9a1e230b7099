package stillroom.ledger.store;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** The machine stands in the way (locked, damaged or newer file, full disk): its message is one sentence for the maker. */
public final class LedgerException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public LedgerException(String sentence) {
        this(sentence, null);
    }

    public LedgerException(String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
    }

    /** Whether the data file itself refused: a value of the wrong kind, something missing, something there twice. */
    public boolean isRefusalOfTheFile() {
        return getCause() instanceof SQLException;
    }
}
