package stillroom.ledger.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The table of log entries, and the columns of a batch that follow from them. */
final class LogSql {
    private LogSql() {}

    /** How far a log has come. */
    record Head(int entries, String hash) {}

    /** An entry as it is stored. */
    record Link(int number, String body, String hash) {}

    static Head head(Sql sql, long batchId) {
        return sql.first(
                        "select entries, head_hash from batch where id = ?",
                        row -> new Head((int) row.integer("entries"), row.text("head_hash")),
                        batchId)
                .orElseThrow(() -> new IllegalArgumentException("there is no batch " + batchId));
    }

    static Optional<LogEntry> made(Sql sql, long batchId, String requestId) {
        return sql.first(
                "select body from log_entry where batch_id = ? and request_id = ?", LogSql::entry, batchId, requestId);
    }

    static List<LogEntry> log(Sql sql, long batchId) {
        return sql.list("select body from log_entry where batch_id = ? order by number", LogSql::entry, batchId);
    }

    /** Only what concerns each batch as a whole, oldest first. */
    static Map<Long, List<LogEntry>> whole(Sql sql, List<Long> ids) {
        Map<Long, List<LogEntry>> logs = new HashMap<>();
        sql.list(
                """
                select batch_id, body from log_entry
                where batch_id in (select value from json_each(?)) and kind in ('concerned', 'filled', 'struck')
                order by batch_id, number""",
                row -> logs.computeIfAbsent(row.integer("batch_id"), id -> new ArrayList<>())
                        .add(entry(row)),
                ids.toString());
        return logs;
    }

    static List<Link> links(Sql sql, long batchId) {
        return sql.list(
                "select number, body, hash from log_entry where batch_id = ? order by number",
                row -> new Link((int) row.integer("number"), row.text("body"), row.text("hash")),
                batchId);
    }

    static void insert(Sql sql, long batchId, String requestId, LogEntry entry, Link link) {
        sql.run("""
                insert into log_entry (batch_id, number, request_id, at_ms, kind, body, hash)
                values (?, ?, ?, ?, ?, ?, ?)""", batchId, link.number(), requestId, entry.at(), Json.kind(entry.event()), link.body(), link.hash());
    }

    static void summarise(Sql sql, long batchId, BatchState state, LogEntry newest, String hash) {
        sql.run(
                "update batch set stage = ?, due_ms = ?, entries = ?, last_ms = ?, head_hash = ? where id = ?",
                state.stage(),
                due(state),
                newest.number(),
                newest.at(),
                hash,
                batchId);
    }

    /** Nobody waits for the rest of a batch that is decided on. */
    private static Optional<Instant> due(BatchState state) {
        return state.decision().isPresent()
                ? Optional.empty()
                : state.rest().map(rest -> rest.event().due());
    }

    private static LogEntry entry(Row row) {
        return Json.read(row.text("body"), LogEntry.class);
    }
}
