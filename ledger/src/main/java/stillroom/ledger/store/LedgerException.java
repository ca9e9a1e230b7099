package stillroom.ledger.store;

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
}
