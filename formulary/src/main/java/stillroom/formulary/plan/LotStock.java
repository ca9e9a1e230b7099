package stillroom.formulary.plan;

import java.time.LocalDate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;

/**
 * A lot and how much of it the book says is on the shelf.
 *
 * @param onHand may be zero or less where weighings outran the book: the bottle may be there all the same [g]
 */
public record LotStock(Lot lot, Grams onHand) {
    /** Whether it may be poured without a second thought on that day. */
    boolean soundOn(LocalDate day) {
        return lot.state() == Lot.State.RELEASED && !lot.expiredOn(day) && !lot.retestDueOn(day);
    }
}
