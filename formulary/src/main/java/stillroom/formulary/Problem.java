package stillroom.formulary;

/**
 * One thing that is wrong with what the maker typed, to stand beside its field.
 *
 * @param field name of the field, such as {@code mass}
 * @param sentence what is wrong and what would be right, one sentence
 */
public record Problem(String field, String sentence) {}
