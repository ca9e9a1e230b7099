package stillroom.ledger.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;

/** The lots on the shelf. */
public final class LotBook {
    /** Books a delivery; false (and nothing stored) where the code is taken. */
    public boolean add(Lot lot) {
        throw new UnsupportedOperationException();
    }

    /**
     * Stores changed facts of a lot: state, opened, expiry, price, supplier, note.
     *
     * @throws IllegalArgumentException where no such lot exists or material or received amount differ: a wrong amount is
     *     mended by a count
     */
    public void change(Lot lot) {
        throw new UnsupportedOperationException();
    }

    public Optional<StockedLot> lot(String code) {
        throw new UnsupportedOperationException();
    }

    /** All lots, first expired first, those without a date last. */
    public List<StockedLot> all() {
        throw new UnsupportedOperationException();
    }

    /** The lots of one material, first expired first. */
    public List<StockedLot> ofMaterial(String materialKey) {
        throw new UnsupportedOperationException();
    }

    /** Received less poured plus counts; empty where there is no such lot. */
    public Optional<Stock> stock(String code) {
        throw new UnsupportedOperationException();
    }

    /** Books what was really found; the correction follows from what the book said at that moment. */
    public StockCount countStock(String code, Grams found, String reason, Instant at, String by) {
        throw new UnsupportedOperationException();
    }

    /** The counts of a lot, oldest first. */
    public List<StockCount> counts(String code) {
        throw new UnsupportedOperationException();
    }
}
