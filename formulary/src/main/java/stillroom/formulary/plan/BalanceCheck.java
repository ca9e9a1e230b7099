package stillroom.formulary.plan;

import java.time.LocalDate;
import stillroom.formulary.quantity.Grams;

/**
 * A balance was looked at with a reference mass.
 *
 * @param reference what the mass is [g]
 * @param shown what the balance showed [g]
 */
public record BalanceCheck(LocalDate on, Grams reference, Grams shown, String by) {
    /** Off by so much, either sign [g]. */
    public Grams off() {
        return shown.minus(reference);
    }

    /**
     * Whether it lies within twice the standard deviation of a weighing, one step at least. Common practice, no source.
     */
    public boolean good(Balance balance) {
        Grams twice = new Weighing(balance, false).deviation();
        Grams most = twice.plus(twice);
        Grams allowed = most.compareTo(balance.step()) > 0 ? most : balance.step();
        return off().abs().compareTo(allowed) <= 0;
    }
}
