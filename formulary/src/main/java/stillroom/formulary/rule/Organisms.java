package stillroom.formulary.rule;

/** Groups of organisms by which published figures on growth and its inhibition are ordered. */
public enum Organisms {
    GRAM_NEGATIVE("Gram-negative bacteria"),
    GRAM_POSITIVE("Gram-positive bacteria"),
    YEAST("yeasts"),
    MOULD("moulds");

    private final String words;

    Organisms(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
