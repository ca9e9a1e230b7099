package stillroom.ledger.batch;

import java.util.List;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.store.Micrograms;
import stillroom.ledger.store.Sql;

/** The table of which lot went into which batch, and the running sum that each lot keeps of it. */
final class LotUseSql {
    private LotUseSql() {}

    private record Use(int entry, int part, String lot, long micrograms, boolean byHand, boolean struck) {}

    static void book(Sql sql, long batchId, LogEntry entry) {
        if (entry.event() instanceof BatchEvent.Poured poured) {
            poured.lot().ifPresent(lot -> {
                insert(sql, batchId, entry, 1, lot, poured.materialKey(), poured.mass(), true);
                takeFromLot(sql, lot, Micrograms.of(poured.mass()));
            });
        }
        if (entry.event() instanceof BatchEvent.LotsNamed named) {
            bookNamed(sql, batchId, entry, named);
        }
        if (entry.event() instanceof BatchEvent.BulkReceived bulk) {
            bookParts(sql, batchId, entry, bulk.parts());
        }
    }

    /** The weighing's own lot is given back where the entry is settled with the rest of the log. */
    private static void bookNamed(Sql sql, long batchId, LogEntry entry, BatchEvent.LotsNamed named) {
        int number = 0;
        for (BatchEvent.LotPart part : named.parts()) {
            number++;
            insert(sql, batchId, entry, number, part.lot(), materialOf(sql, batchId, named.entry()), part.mass(), true);
            takeFromLot(sql, part.lot(), Micrograms.of(part.mass()));
        }
    }

    private static String materialOf(Sql sql, long batchId, int pour) {
        return LogSql.log(sql, batchId).stream()
                .filter(one -> one.number() == pour && one.event() instanceof BatchEvent.Poured)
                .map(one -> ((BatchEvent.Poured) one.event()).materialKey())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("entry " + pour + " is no weighing"));
    }

    private static void bookParts(Sql sql, long batchId, LogEntry entry, List<BatchEvent.BulkPart> parts) {
        int number = 0;
        for (BatchEvent.BulkPart part : parts) {
            number++;
            if (part.lot().isPresent()) {
                insert(sql, batchId, entry, number, part.lot().get(), part.materialKey(), part.mass(), false);
            }
        }
    }

    private static void insert(
            Sql sql,
            long batchId,
            LogEntry entry,
            int part,
            String lot,
            String materialKey,
            Grams mass,
            boolean byHand) {
        sql.run("""
                insert into lot_use (batch_id, entry, part, lot_code, material_key, mass_ug, by_hand, struck)
                values (?, ?, ?, ?, ?, ?, ?, 0)""", batchId, entry.number(), part, lot, materialKey, Micrograms.of(mass), byHand);
    }

    /** Marks the uses of struck entries, and unmarks those whose strike was itself struck. */
    static void strike(Sql sql, long batchId, Set<Integer> struck) {
        List<Use> uses = sql.list(
                "select entry, part, lot_code, mass_ug, by_hand, struck from lot_use where batch_id = ?",
                row -> new Use(
                        (int) row.integer("entry"),
                        (int) row.integer("part"),
                        row.text("lot_code"),
                        row.integer("mass_ug"),
                        row.integer("by_hand") == 1,
                        row.integer("struck") == 1),
                batchId);
        for (Use use : uses) {
            if (use.struck() != struck.contains(use.entry())) {
                mark(sql, batchId, use, !use.struck());
            }
        }
    }

    private static void mark(Sql sql, long batchId, Use use, boolean struck) {
        sql.run(
                "update lot_use set struck = ? where batch_id = ? and entry = ? and part = ?",
                struck,
                batchId,
                use.entry(),
                use.part());
        if (use.byHand()) {
            takeFromLot(sql, use.lot(), struck ? -use.micrograms() : use.micrograms());
        }
    }

    private static void takeFromLot(Sql sql, String lot, long micrograms) {
        sql.run("update lot set poured_ug = poured_ug + ? where code = ?", micrograms, lot);
    }
}
