package stillroom.ledger.lot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Micrograms;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The tables of lots and counts. */
final class LotSql {
    private static final String SELECT = "select body, received_ug, poured_ug, counted_ug from lot ";
    private static final String FIRST_EXPIRED =
            "order by case when expires_on is null then 1 else 0 end, expires_on, received_on, code";

    private LotSql() {}

    static List<StockedLot> all(Sql sql) {
        return sql.list(SELECT + FIRST_EXPIRED, LotSql::stocked);
    }

    static List<StockedLot> ofMaterial(Sql sql, String materialKey) {
        return sql.list(SELECT + "where material_key = ? " + FIRST_EXPIRED, LotSql::stocked, materialKey);
    }

    static Optional<StockedLot> one(Sql sql, String code) {
        return sql.first(SELECT + "where code = ?", LotSql::stocked, code);
    }

    /** Pourings booked under this code before the lot itself was are counted at once. */
    static boolean insert(Sql sql, Lot lot) {
        long poured = sql.number(
                "select sum(mass_ug) as n from lot_use where lot_code = ? and struck = 0 and by_hand = 1", lot.code());
        int rows = sql.run(
                """
                insert into lot (code, material_key, state, received_on, expires_on, received_ug, poured_ug, counted_ug, body)
                values (?, ?, ?, ?, ?, ?, ?, 0, ?) on conflict (code) do nothing""",
                lot.code(),
                lot.materialKey(),
                lot.state(),
                lot.receivedOn(),
                lot.expires(),
                Micrograms.of(lot.received()),
                poured,
                Json.write(lot));
        return rows == 1;
    }

    static void update(Sql sql, Lot lot) {
        sql.run(
                "update lot set state = ?, received_on = ?, expires_on = ?, body = ? where code = ?",
                lot.state(),
                lot.receivedOn(),
                lot.expires(),
                Json.writeOver(sql.body("select body from lot where code = ?", lot.code()), lot),
                lot.code());
    }

    static int counted(Sql sql, String code) {
        return (int) sql.number("select count(*) as n from stock_count where lot_code = ?", code);
    }

    static void insert(Sql sql, StockCount count) {
        long correction = Micrograms.of(count.correction());
        sql.run(
                "insert into stock_count (lot_code, number, correction_ug, body) values (?, ?, ?, ?)",
                count.lotCode(),
                count.number(),
                correction,
                Json.write(count));
        sql.run("update lot set counted_ug = counted_ug + ? where code = ?", correction, count.lotCode());
    }

    static List<StockCount> counts(Sql sql, String code) {
        return sql.list(
                "select body from stock_count where lot_code = ? order by number",
                row -> Json.read(row.text("body"), StockCount.class),
                code);
    }

    private static StockedLot stocked(Row row) {
        return new StockedLot(
                Json.read(row.text("body"), Lot.class),
                new Stock(mass(row, "received_ug"), mass(row, "poured_ug"), mass(row, "counted_ug")));
    }

    private static Grams mass(Row row, String column) {
        return Micrograms.grams(row.integer(column));
    }
}
