package stillroom.ledger.exchange;

/**
 * One thing that is wrong with a file, or worth knowing about it.
 *
 * @param textLine line of the text in which it stands, from 1; 0 where it concerns the whole
 * @param field name of the field, such as {@code percent}
 * @param sentence what is wrong and what would be right, naming the formula line
 */
public record FileProblem(int textLine, String field, String sentence) {
    /** As a person reads it, with the place in the text. */
    public String words() {
        return textLine == 0 ? sentence : sentence + " (text line " + textLine + ")";
    }
}
