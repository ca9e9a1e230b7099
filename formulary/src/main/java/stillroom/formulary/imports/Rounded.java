package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures of spreadsheets without the noise of binary floating point, such as 9.8000000000000007 for 9.8. */
final class Rounded {
    private static final MathContext DIGITS = new MathContext(12);

    private Rounded() {}

    static BigDecimal clean(BigDecimal value) {
        BigDecimal plain = value.round(DIGITS).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
