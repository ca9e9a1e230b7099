package stillroom.ledger.lot;

import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;

/** A lot with what is left of it. */
public record StockedLot(Lot lot, Stock stock) {
    public Grams onHand() {
        return stock.onHand();
    }
}
