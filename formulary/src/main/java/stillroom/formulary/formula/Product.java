package stillroom.formulary.formula;

/** A product under development or on sale: its name and brief stand over all versions of its formula. */
public record Product(long id, String name, Brief brief, String note) {}
