package stillroom.formulary.material;

import java.time.LocalDate;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Price;

/**
 * One delivery of a material on the shelf.
 *
 * @param code the code that the maker reads on the bottle, unique in the workshop
 * @param supplierLot the supplier's own lot number, may be empty
 * @param received amount received [g]
 * @param expires best before or retest date
 * @param state whether it may be used
 */
public record Lot(
        String code,
        String materialKey,
        String supplierLot,
        String supplier,
        Grams received,
        LocalDate receivedOn,
        Optional<LocalDate> opened,
        Optional<LocalDate> expires,
        Optional<Price> price,
        State state,
        String note) {
    /** Whether a lot may be poured. */
    public enum State {
        RELEASED,
        QUARANTINE,
        USED_UP
    }

    public boolean expiredOn(LocalDate day) {
        return expires.map(day::isAfter).orElse(false);
    }
}
