package stillroom.formulary.imports;

/** What a row of a sheet is. */
public enum RowKind {
    LINE("Ingredient"),
    PHASE("Phase"),
    TOTAL("Total"),
    SUBTOTAL("Total of a phase"),
    HEADING("Headings"),
    TITLE("Title"),
    NOTE("Note"),
    BLANK("Empty"),
    LEFT_OUT("Left out");

    private final String words;

    RowKind(String words) {
        this.words = words;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }
}
