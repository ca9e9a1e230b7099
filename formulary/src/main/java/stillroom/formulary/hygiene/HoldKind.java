package stillroom.formulary.hygiene;

/** What stands. */
public enum HoldKind {
    PHASE("phase"),
    BULK("bulk"),
    SLURRY("unpreserved, with water"),
    PREMIX("premix");

    private final String words;

    HoldKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** How long it may stand [h]. */
    public int limit(HoldLimits limits) {
        return switch (this) {
            case PHASE -> limits.phase();
            case BULK -> limits.bulk();
            case SLURRY -> limits.slurry();
            case PREMIX -> limits.premix();
        };
    }
}
