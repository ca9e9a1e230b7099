package stillroom.ledger.imports;

/** A file that cannot be opened; the message goes behind its name and says why and what to do. */
final class UnreadableSheet extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableSheet(String message) {
        super(message);
    }
}
