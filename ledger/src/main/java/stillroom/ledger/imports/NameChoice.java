package stillroom.ledger.imports;

/**
 * A decision of the maker about a name.
 *
 * @param materialKey the card that is meant; empty where the name means no card
 */
public record NameChoice(String materialKey) {}
