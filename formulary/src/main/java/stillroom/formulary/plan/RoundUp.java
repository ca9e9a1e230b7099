package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import stillroom.formulary.quantity.Grams;

/** Round figures that are never too small: for shopping lists and proposed batch sizes. */
final class RoundUp {
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.CEILING);

    private RoundUp() {}

    static Grams twoDigits(Grams mass) {
        return new Grams(mass.value().round(TWO_DIGITS));
    }

    /** The mass of which a percentage is at least this part, two digits, rounded up. */
    static Grams wholeFor(Grams part, BigDecimal percent) {
        return twoDigits(new Grams(part.value().movePointRight(2).divide(percent, TWO_DIGITS)));
    }
}
