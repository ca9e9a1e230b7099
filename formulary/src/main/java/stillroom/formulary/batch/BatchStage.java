package stillroom.formulary.batch;

/** Where a batch stands. */
public enum BatchStage {
    PLANNED("planned"),
    IN_WORK("in work"),
    RESTING("resting"),
    FILLED("filled"),
    RELEASED("released"),
    REJECTED("rejected");

    private final String words;

    BatchStage(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
