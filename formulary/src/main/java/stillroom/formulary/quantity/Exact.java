package stillroom.formulary.quantity;

import java.math.BigDecimal;

/** The one normal form of decimals inside the value types, so that equal figures are equal records. */
final class Exact {
    private Exact() {}

    static BigDecimal normal(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
