package stillroom.formulary.formula;

/**
 * One ingredient line.
 *
 * @param id unique within the formula and kept over its versions, so that versions compare line by line
 * @param materialKey which card
 * @param note why it is there, may be empty
 */
public record Line(String id, String materialKey, Amount amount, String note) {}
