package stillroom.formulary.imports;

/** What stands before the decimals. */
public enum Mark {
    POINT('.', "point"),
    COMMA(',', "comma");

    private final char sign;
    private final String words;

    Mark(char sign, String words) {
        this.sign = sign;
        this.words = words;
    }

    public char sign() {
        return sign;
    }

    public String words() {
        return words;
    }

    Mark other() {
        return this == POINT ? COMMA : POINT;
    }
}
