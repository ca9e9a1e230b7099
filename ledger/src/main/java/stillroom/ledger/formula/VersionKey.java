package stillroom.ledger.formula;

/** Which version of which product. */
public record VersionKey(long productId, int number) {}
