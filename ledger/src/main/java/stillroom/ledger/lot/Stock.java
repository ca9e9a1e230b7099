package stillroom.ledger.lot;

import stillroom.formulary.quantity.Grams;

/**
 * What the book knows of a lot's amount, to the microgram. May be below zero: the book never blocks the hand, a count mends it.
 *
 * @param received on delivery [g]
 * @param poured net of what was taken back and of struck entries [g]
 * @param counted sum of the corrections by stock counts, either sign [g]
 */
public record Stock(Grams received, Grams poured, Grams counted) {
    /** What should be in the bottle [g]. */
    public Grams onHand() {
        return received.minus(poured).plus(counted);
    }
}
