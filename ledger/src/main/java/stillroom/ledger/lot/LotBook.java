package stillroom.ledger.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Sql;

/** The lots on the shelf. */
public final class LotBook {
    private final Database database;

    public LotBook(Database database) {
        this.database = database;
    }

    /** Books a delivery; false (and nothing stored) where the code is taken. */
    public boolean add(Lot lot) {
        return database.write(sql -> LotSql.insert(sql, lot));
    }

    /**
     * Stores changed facts of a lot: state, opened, expiry, price, supplier, note.
     *
     * @throws IllegalArgumentException where no such lot exists or material or received amount differ: a wrong amount is
     *     mended by a count
     */
    public void change(Lot lot) {
        database.write(sql -> {
            Lot before = known(sql, lot.code()).lot();
            if (!before.materialKey().equals(lot.materialKey())
                    || !before.received().equals(lot.received())) {
                throw new IllegalArgumentException(
                        "material and received amount of lot " + lot.code() + " stay as they were booked");
            }
            LotSql.update(sql, lot);
            return lot;
        });
    }

    public Optional<StockedLot> lot(String code) {
        return database.read(sql -> LotSql.one(sql, code));
    }

    /** All lots, first expired first, those without a date last. */
    public List<StockedLot> all() {
        return database.read(LotSql::all);
    }

    /** The lots of one material, first expired first. */
    public List<StockedLot> ofMaterial(String materialKey) {
        return database.read(sql -> LotSql.ofMaterial(sql, materialKey));
    }

    /** Received less poured plus counts; empty where there is no such lot. */
    public Optional<Stock> stock(String code) {
        return lot(code).map(StockedLot::stock);
    }

    /**
     * Books what was really found; the correction follows from what the book said at that moment.
     *
     * @throws IllegalArgumentException where there is no such lot
     */
    public StockCount countStock(String code, Grams found, String reason, Instant at, String by) {
        return database.write(sql -> {
            Grams correction = found.minus(known(sql, code).onHand());
            StockCount count = new StockCount(code, LotSql.counted(sql, code) + 1, at, by, found, correction, reason);
            LotSql.insert(sql, count);
            return count;
        });
    }

    /** The counts of a lot, oldest first. */
    public List<StockCount> counts(String code) {
        return database.read(sql -> LotSql.counts(sql, code));
    }

    private static StockedLot known(Sql sql, String code) {
        return LotSql.one(sql, code).orElseThrow(() -> new IllegalArgumentException("there is no lot " + code));
    }
}
