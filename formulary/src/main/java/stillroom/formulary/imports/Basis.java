package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * For how much of a material a price is.
 *
 * @param grams for {@link Kind#MASS}, so much [g]
 */
record Basis(Kind kind, Optional<BigDecimal> grams) {
    /** What a price can be for. */
    enum Kind {
        MASS,
        /** What the column of packs says. */
        PACK,
        /** One of what the column of units says. */
        UNIT,
        /** Litres and the like: no mass without a density. */
        VOLUME,
        /** The whole that is on the shelf, as its value. */
        UNSAID
    }

    static final Basis UNSAID = new Basis(Kind.UNSAID, Optional.empty());

    static Basis of(BigDecimal grams) {
        return new Basis(Kind.MASS, Optional.of(grams));
    }

    static Basis of(Kind kind) {
        return new Basis(kind, Optional.empty());
    }

    boolean isMass() {
        return kind == Kind.MASS;
    }
}
