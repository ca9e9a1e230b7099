package stillroom.desk.shell;

/**
 * Something in a form that cannot be taken as it is.
 *
 * @param field name of the field, empty for the form as a whole
 * @param sentence what is wrong and what would do
 */
public record Problem(String field, String sentence) {}
