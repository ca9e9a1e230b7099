package stillroom.formulary.reference;

/** A reference table that cannot be trusted as it stands; the message names file, line and what is wrong. */
public final class ReferenceFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ReferenceFault(String file, long line, String fault) {
        super(file + ", line " + line + ": " + fault);
    }
}
