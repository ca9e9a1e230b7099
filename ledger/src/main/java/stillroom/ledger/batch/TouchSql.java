package stillroom.ledger.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.store.Sql;

/** Keeps up which vessel, balance, person and pack lot a batch had to do with, and whose bulk it got. */
final class TouchSql {
    private TouchSql() {}

    private record Touch(String kind, String name, int units) {}

    static final String VESSEL = "vessel";
    static final String BALANCE = "balance";
    static final String PERSON = "person";
    static final String PACK_LOT = "pack-lot";

    /** Books one entry, within the transaction that writes it. */
    static void book(Sql sql, long batchId, LogEntry entry) {
        touches(entry).stream()
                .filter(touch -> !touch.name().isBlank())
                .forEach(touch -> sql.run("""
                        insert into batch_touch (kind, name, batch_id, units) values (?, ?, ?, ?)
                        on conflict (kind, name, batch_id) do update set units = units + excluded.units""", touch.kind(), small(touch.name()), batchId, touch.units()));
        if (entry.event() instanceof BatchEvent.BulkReceived bulk) {
            sql.run(
                    "insert or ignore into batch_source (from_code, batch_id) values (?, ?)",
                    bulk.fromBatch(),
                    batchId);
        }
    }

    /** Books a whole log anew, after something in it was struck. */
    static void rebook(Sql sql, long batchId, List<LogEntry> counting) {
        sql.run("delete from batch_touch where batch_id = ?", batchId);
        sql.run("delete from batch_source where batch_id = ?", batchId);
        counting.forEach(entry -> book(sql, batchId, entry));
    }

    private static List<Touch> touches(LogEntry entry) {
        List<Touch> touches = new ArrayList<>();
        touches.add(of(PERSON, entry.by()));
        BatchEvent event = entry.event();
        if (event instanceof BatchEvent.Poured poured) {
            touches.add(of(VESSEL, poured.vessel()));
            touches.add(of(BALANCE, poured.balance()));
            touches.add(of(PERSON, poured.checkedBy()));
        } else if (event instanceof BatchEvent.VesselReady ready) {
            touches.add(of(VESSEL, ready.vessel()));
        } else if (event instanceof BatchEvent.Combined combined) {
            touches.add(of(VESSEL, combined.from()));
            touches.add(of(VESSEL, combined.into()));
        } else if (event instanceof BatchEvent.BulkReceived bulk) {
            touches.add(of(VESSEL, bulk.vessel()));
        } else if (event instanceof BatchEvent.Filled filled) {
            touches.add(of(VESSEL, filled.vessel()));
            Optional<String> lot = filled.packLot();
            lot.ifPresent(code -> touches.add(new Touch(PACK_LOT, code, filled.containers())));
        } else if (event instanceof BatchEvent.Decided decided) {
            touches.add(of(PERSON, decided.by()));
        }
        return touches;
    }

    private static Touch of(String kind, String name) {
        return new Touch(kind, name, 0);
    }

    /** Batches begun lately are asked alone: a vessel does not wait for older ones. */
    static Optional<BatchBook.VesselUse> lastUse(Sql sql, String vessel) {
        return sql
                .list(
                        """
                        select t.batch_id, (
                          select max(e.at_ms) from log_entry e
                          where e.batch_id = t.batch_id and e.kind in ('poured', 'bulk-received', 'combined', 'filled')
                            and lower(trim(coalesce(json_extract(e.body, '$.event.vessel'),
                              json_extract(e.body, '$.event.into')))) = ?) as used
                        from batch_touch t where t.kind = 'vessel' and t.name = ? order by t.batch_id desc limit 5""",
                        row -> row.maybeInteger("used")
                                .flatMap(at -> BatchSql.row(sql, row.integer("batch_id"))
                                        .map(batch -> new BatchBook.VesselUse(batch, Instant.ofEpochMilli(at)))),
                        small(vessel),
                        small(vessel))
                .stream()
                .flatMap(Optional::stream)
                .max(Comparator.comparing(BatchBook.VesselUse::at));
    }

    /** As names are kept that are told apart without regard to capitals; the file's own lower() knows only a to z. */
    static String small(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
