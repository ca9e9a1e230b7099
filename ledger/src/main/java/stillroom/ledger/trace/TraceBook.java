package stillroom.ledger.trace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Micrograms;
import stillroom.ledger.store.Sql;
import stillroom.ledger.trace.Reach.ReachedBatch;
import stillroom.ledger.trace.Reach.ReachedLot;

/** Follows things through the workshop, through lots made of lots and bulk divided into batches. Thread-safe. */
public final class TraceBook {
    private final Database database;
    private final BatchBook batches;
    private final LotBook lots;

    public TraceBook(Database database, BatchBook batches, LotBook lots) {
        this.database = database;
        this.batches = batches;
        this.lots = lots;
    }

    /** All that something touched. */
    public Reach reach(TraceStart start) {
        return database.read(sql -> reach(sql, start));
    }

    private Reach reach(Sql sql, TraceStart start) {
        List<String> codes = new ArrayList<>();
        List<Long> ids = new ArrayList<>();
        for (TraceSql.Node node : TraceSql.forward(sql, start)) {
            node.lot().ifPresent(codes::add);
            node.batch().ifPresent(ids::add);
        }
        Map<Long, Long> direct = new HashMap<>();
        codes.forEach(code -> poured(sql, code, direct));
        List<ReachedBatch> reached = batches.reached(ids).stream()
                .map(found -> batch(found.row(), found.state(), direct))
                .toList();
        return new Reach(codes.stream().map(code -> lot(sql, code)).toList(), reached);
    }

    private static ReachedBatch batch(BatchRow row, BatchState state, Map<Long, Long> direct) {
        Grams mass = Micrograms.grams(direct.getOrDefault(row.batch().id(), 0L));
        return new ReachedBatch(row, mass, state.units(), state.concerns());
    }

    private static void poured(Sql sql, String lot, Map<Long, Long> direct) {
        sql.list(
                "select batch_id, sum(mass_ug) as n from lot_use where lot_code = ? and struck = 0 group by batch_id",
                row -> direct.merge(row.integer("batch_id"), row.integer("n"), Long::sum),
                lot);
    }

    private ReachedLot lot(Sql sql, String code) {
        boolean made = sql.number("select count(*) as n from lot_origin where lot_code = ?", code) > 0;
        return new ReachedLot(code, lots.lot(code), made);
    }

    /** What went into a batch, all the way back to what was bought. */
    public Sources sourcesOfBatch(String batchCode) {
        return database.read(sql -> TraceSql.back(sql, batchCode, true));
    }

    /** What a lot was made from; nothing where it was bought. */
    public Sources sourcesOfLot(String lotCode) {
        return database.read(sql -> TraceSql.back(sql, lotCode, false));
    }

    /** As what a word is known, so that one box serves all; in the order of likelihood. */
    public List<TraceStart.Kind> known(String word) {
        String name = word.strip();
        List<TraceStart.Kind> kinds = new ArrayList<>();
        if (batches.byCode(name).isPresent()) {
            kinds.add(TraceStart.Kind.BATCH);
        }
        return database.read(sql -> {
            if (lots.lot(name).isPresent()
                    || sql.number("select count(*) as n from lot_use where lot_code = ? limit 1", name) > 0) {
                kinds.add(TraceStart.Kind.LOT);
            }
            for (TraceStart.Kind kind : List.of(
                    TraceStart.Kind.PACK_LOT,
                    TraceStart.Kind.VESSEL,
                    TraceStart.Kind.BALANCE,
                    TraceStart.Kind.PERSON)) {
                if (sql.first(
                                "select 1 as n from batch_touch where kind = ? and name = ? limit 1",
                                row -> true,
                                TraceSql.word(kind),
                                TraceSql.small(name))
                        .isPresent()) {
                    kinds.add(kind);
                }
            }
            if (sql.number("select count(*) as n from lot where material_key = ?", name) > 0
                    || sql.number("select count(*) as n from version_material where material_key = ?", name) > 0) {
                kinds.add(TraceStart.Kind.MATERIAL);
            }
            if (sql.first(
                            "select 1 as n from lot where lower(trim(json_extract(body, '$.supplier'))) = ? limit 1",
                            row -> true,
                            TraceSql.small(name))
                    .isPresent()) {
                kinds.add(TraceStart.Kind.SUPPLIER);
            }
            return kinds;
        });
    }

    /** Says from what a lot was made here. Called in the transaction that books the lot. */
    public void madeFrom(String lotCode, List<Origin> origins) {
        database.write(sql -> {
            int number = (int) sql.number("select count(*) as n from lot_origin where lot_code = ?", lotCode);
            for (Origin origin : origins) {
                number++;
                sql.run(
                        "insert into lot_origin (lot_code, number, from_lot, from_code, mass_ug) values (?, ?, ?, ?, ?)",
                        lotCode,
                        number,
                        origin.fromLot(),
                        origin.fromBatch(),
                        Micrograms.of(origin.mass()));
            }
            return number;
        });
    }

    /**
     * One thing that went into a lot made here: another lot, or a batch by its code.
     *
     * @param mass of it [g]
     */
    public record Origin(Optional<String> fromLot, Optional<String> fromBatch, Grams mass) {}
}
