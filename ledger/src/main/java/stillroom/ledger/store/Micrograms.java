package stillroom.ledger.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stillroom.formulary.quantity.Grams;

/** Masses as the database adds them up: whole micrograms, up to 9.2 million tonnes. The exact figure stands in the document. */
public final class Micrograms {
    private static final int DECIMALS = 6;

    private Micrograms() {}

    /** To the nearest microgram; a tie goes to the even one, so that a weighing and its taking back cancel. */
    public static long of(Grams mass) {
        try {
            return mass.value()
                    .movePointRight(DECIMALS)
                    .setScale(0, RoundingMode.HALF_EVEN)
                    .longValueExact();
        } catch (ArithmeticException e) {
            throw new IllegalArgumentException("mass is " + mass + " g, beyond what can be stored", e);
        }
    }

    public static Grams grams(long micrograms) {
        return new Grams(BigDecimal.valueOf(micrograms, DECIMALS));
    }
}
