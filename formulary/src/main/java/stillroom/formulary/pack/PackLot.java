package stillroom.formulary.pack;

import java.time.LocalDate;
import java.util.Optional;
import stillroom.formulary.quantity.Money;

/**
 * A delivery of containers.
 *
 * @param code on the carton, unique among lots of containers
 * @param received how many came
 * @param each what one cost
 * @param held whether it may not be used yet
 */
public record PackLot(
        String code,
        String pack,
        String supplier,
        String supplierLot,
        int received,
        LocalDate receivedOn,
        Optional<Money> each,
        boolean held,
        String note) {
    public PackLot {
        if (code.isBlank() || received < 0) {
            throw new IllegalArgumentException("a lot has a code and 0 or more containers, not " + received);
        }
    }

    /** The same lot, held back or set free. */
    public PackLot holding(boolean hold) {
        return new PackLot(code, pack, supplier, supplierLot, received, receivedOn, each, hold, note);
    }
}
