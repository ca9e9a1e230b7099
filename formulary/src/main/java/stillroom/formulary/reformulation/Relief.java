package stillroom.formulary.reformulation;

/**
 * A least relaxation with which a formula exists.
 *
 * @param words what would be allowed
 * @param wish the wish that allows it
 */
public record Relief(String words, Wish wish) {}
