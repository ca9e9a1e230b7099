package stillroom.desk.materials;

/**
 * A fact of a card as it is shown.
 *
 * @param source where it comes from, empty where nobody said
 */
public record FactRow(String words, String value, String source) {}
