package stillroom.formulary.imports;

/** What a column holds. */
public enum Meaning {
    NAME("Ingredient"),
    INCI("INCI name"),
    COMMON("Second name"),
    AMOUNT("Amount"),
    UNIT("Unit"),
    PHASE("Phase"),
    FORMULA("Name of the formula"),
    FUNCTION("Function"),
    CAS("CAS number"),
    NOTE("Note"),
    SUPPLIER("Supplier"),
    PRICE("Price"),
    PACK("Size of the pack"),
    VALUE("Value of the stock"),
    STOCK("Amount on the shelf"),
    LOT("Lot"),
    RECEIVED("Day received"),
    EXPIRY("Best before"),
    NUMBER("Number of the line"),
    LEFT_OUT("Left out");

    private final String words;

    Meaning(String words) {
        this.words = words;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }

    boolean names() {
        return this == NAME || this == INCI || this == COMMON;
    }

    /** Whether such a column belongs to a list of materials and to no formula. */
    boolean isOfTheShelf() {
        return this == SUPPLIER
                || this == PRICE
                || this == PACK
                || this == VALUE
                || this == STOCK
                || this == LOT
                || this == RECEIVED
                || this == EXPIRY;
    }
}
