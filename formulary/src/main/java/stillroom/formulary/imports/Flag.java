package stillroom.formulary.imports;

/**
 * Something that the maker should see about what was read.
 *
 * @param doubtful whether it may be wrong; otherwise it only says how it was read
 * @param sentence what was seen and what was made of it
 */
public record Flag(boolean doubtful, String sentence) {
    /** Only says how something was read. */
    public static Flag note(String sentence) {
        return new Flag(false, sentence);
    }

    /** May be wrong: the maker decides. */
    public static Flag doubt(String sentence) {
        return new Flag(true, sentence);
    }
}
