package stillroom.science.equilibrium;

/** A border of the model's range of validity; beyond it the answer is marked, not refused. */
public enum RangeLimit {
    /** Ionic strength above 0.5 mol/kg. */
    IONIC_STRENGTH("ionic strength above 0.5 mol/kg"),
    /** An ion of more than four charges. */
    CHARGE("an ion with more than four charges"),
    /** Temperature outside 5 to 60 °C. */
    TEMPERATURE("temperature outside 5 to 60 °C");

    private final String sentence;

    RangeLimit(String sentence) {
        this.sentence = sentence;
    }

    /** What lies outside, in words. */
    public String sentence() {
        return sentence;
    }
}
