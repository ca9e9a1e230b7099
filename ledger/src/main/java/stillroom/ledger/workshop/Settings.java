package stillroom.ledger.workshop;

/** The one record about the workshop itself. */
public final class Settings {
    public Workshop read() {
        throw new UnsupportedOperationException();
    }

    public void write(Workshop workshop) {
        throw new UnsupportedOperationException();
    }
}
