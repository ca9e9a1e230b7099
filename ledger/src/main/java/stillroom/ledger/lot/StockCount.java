package stillroom.ledger.lot;

import java.time.Instant;
import stillroom.formulary.quantity.Grams;

/**
 * Somebody weighed what is really there.
 *
 * @param number 1, 2, 3 ... within the lot
 * @param found what the bottle held [g]
 * @param correction what the book was off by, found less on hand [g]
 * @param reason why the book was off, as the maker sees it
 */
public record StockCount(
        String lotCode, int number, Instant at, String by, Grams found, Grams correction, String reason) {}
