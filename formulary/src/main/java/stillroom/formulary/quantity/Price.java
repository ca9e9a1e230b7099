package stillroom.formulary.quantity;

import java.math.MathContext;

/**
 * What an amount of a material costs, as on the invoice: so much money for so many grams.
 *
 * @param paid not negative
 * @param amount positive [g]
 */
public record Price(Money paid, Grams amount) {
    public Price {
        if (paid.value().signum() < 0) {
            throw new IllegalArgumentException("price is " + paid.value().toPlainString() + ", must not be negative");
        }
        if (amount.signum() <= 0) {
            throw new IllegalArgumentException("priced amount is " + amount + " g, must be above 0 g");
        }
    }

    /** What a mass costs at this price, to 16 significant digits. */
    public Money of(Grams mass) {
        return new Money(paid.value().multiply(mass.value()).divide(amount.value(), MathContext.DECIMAL64));
    }
}
