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
 * @param expires best before
 * @param state whether it may be used
 * @param certificate what was measured of just this lot
 * @param retest the day on which it is to be tested again before it is used further
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
        String note,
        Optional<Certificate> certificate,
        Optional<LocalDate> retest) {
    /** A lot of which nothing is known beyond its label. */
    public Lot(
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
        this(
                code,
                materialKey,
                supplierLot,
                supplier,
                received,
                receivedOn,
                opened,
                expires,
                price,
                state,
                note,
                Optional.empty(),
                Optional.empty());
    }

    /** Whether a lot may be poured. */
    public enum State {
        RELEASED,
        QUARANTINE,
        USED_UP
    }

    /** Whether the day of its retest has come: it may be good, but nobody has looked. */
    public boolean retestDueOn(LocalDate day) {
        return retest.map(due -> !day.isBefore(due)).orElse(false);
    }

    /** The same lot in another state. */
    public Lot in(State other) {
        return new Lot(
                code,
                materialKey,
                supplierLot,
                supplier,
                received,
                receivedOn,
                opened,
                expires,
                price,
                other,
                note,
                certificate,
                retest);
    }

    /** The same lot with other values of its certificate. */
    public Lot with(Optional<Certificate> measured, Optional<LocalDate> testedAgain) {
        return new Lot(
                code,
                materialKey,
                supplierLot,
                supplier,
                received,
                receivedOn,
                opened,
                expires,
                price,
                state,
                note,
                measured,
                testedAgain);
    }

    public boolean expiredOn(LocalDate day) {
        return expires.map(day::isAfter).orElse(false);
    }
}
