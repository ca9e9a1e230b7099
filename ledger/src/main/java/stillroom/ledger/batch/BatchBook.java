package stillroom.ledger.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.Chain;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Sql;

/** Batches and their logs. What stands in a log stays there: a mistake is struck by a later entry. */
public final class BatchBook {
    private static final DateTimeFormatter CODE_DAY = DateTimeFormatter.ofPattern("yyMMdd");

    private final Database database;

    public BatchBook(Database database) {
        this.database = database;
    }

    /** A free code for a batch opened on this day, such as 261125-1; nothing is reserved. */
    public String proposeCode(LocalDate day) {
        String beginning = CODE_DAY.format(day) + "-";
        Set<String> taken = new HashSet<>(database.read(sql -> BatchSql.codesBeginning(sql, beginning)));
        int number = 1;
        while (taken.contains(beginning + number)) {
            number++;
        }
        return beginning + number;
    }

    /**
     * Opens a batch with an empty log.
     *
     * @param version a kept version; none when weighed free hand
     * @return empty (and nothing stored) where the code is taken
     * @throws IllegalArgumentException where there is no such product or kept version
     */
    public Optional<Batch> open(long productId, Optional<Integer> version, String code, LocalDate openedOn) {
        return database.write(sql -> {
            Batch batch = new Batch(BatchSql.freeId(sql), code, productId, version, openedOn);
            BatchSql.checkOrigin(sql, batch);
            return BatchSql.insert(sql, batch) ? Optional.of(batch) : Optional.<Batch>empty();
        });
    }

    public Optional<Batch> batch(long id) {
        return database.read(sql -> BatchSql.one(sql, id));
    }

    public Optional<Batch> byCode(String code) {
        return database.read(sql -> BatchSql.byCode(sql, code));
    }

    /** The batch as lists show it, with its stage. */
    public Optional<BatchRow> row(long id) {
        return database.read(sql -> BatchSql.row(sql, id));
    }

    /**
     * Adds an entry to the log. It is on disk when this returns.
     *
     * @param requestId made by the page for this one act: the same request again returns the entry that it made
     * @throws IllegalArgumentException where there is no such batch, a struck entry does not exist, or the request has
     *     made a different entry before
     */
    public LogEntry append(long batchId, String requestId, Instant at, String by, BatchEvent event) {
        LogEntry wanted = new LogEntry(0, at, by, event);
        return database.write(sql -> Appending.append(sql, batchId, requestId, wanted));
    }

    /** The entry that a request has made, so that the same form sent twice is told from a new act. */
    public Optional<LogEntry> made(long batchId, String requestId) {
        return database.read(sql -> LogSql.made(sql, batchId, requestId));
    }

    /** The whole log, oldest first. */
    public List<LogEntry> log(long batchId) {
        return database.read(sql -> LogSql.log(sql, batchId));
    }

    /** The batches that are not yet released or rejected, those due first, then the newest. */
    public List<BatchRow> unfinished() {
        return database.read(BatchSql::unfinished);
    }

    /** One page of a list, newest first. */
    public BatchPage page(BatchQuery query, int offset, int size) {
        return database.read(sql -> BatchSql.page(sql, query, offset, size));
    }

    /** The batches made from a version, newest first. */
    public List<BatchRow> fromVersion(long productId, int number) {
        return database.read(sql -> BatchSql.fromVersion(sql, productId, number));
    }

    /** Every batch that holds some of a lot, weighed in or come with the bulk of another batch, newest first. */
    public List<LotUse> holding(String lotCode) {
        return database.read(sql -> BatchSql.holding(sql, lotCode));
    }

    /** When a vessel of this name last held something, over all batches. */
    public Optional<VesselUse> lastUse(String vessel) {
        return database.read(sql -> TouchSql.lastUse(sql, vessel));
    }

    /** How many containers of a lot were filled, over all batches. */
    public int packsUsed(String packLot) {
        return database.read(sql -> (int) sql.number(
                "select sum(units) as n from batch_touch where kind = ? and name = ?",
                TouchSql.PACK_LOT,
                TouchSql.small(packLot)));
    }

    /** A vessel was used in a batch. */
    public record VesselUse(BatchRow row, Instant at) {}

    /** A batch with what its log adds up to as far as it concerns the batch as a whole: fills, units, stops. */
    public record Reached(BatchRow row, BatchState state) {}

    /** These batches, newest first; the work at the bench and the decision are left out of their states. */
    public List<Reached> reached(List<Long> ids) {
        return database.read(sql -> {
            Map<Long, List<LogEntry>> logs = LogSql.whole(sql, ids);
            return BatchSql.rows(sql, ids).stream()
                    .map(row -> new Reached(
                            row, BatchState.of(logs.getOrDefault(row.batch().id(), List.of()))))
                    .toList();
        });
    }

    /** The hash of the newest entry, as 64 hexadecimal digits, which covers the whole log; empty for an empty log. */
    public Optional<String> headHash(long batchId) {
        LogSql.Head head = database.read(sql -> LogSql.head(sql, batchId));
        return head.entries() == 0 ? Optional.empty() : Optional.of(head.hash());
    }

    /**
     * An entry with its hash as it should be.
     *
     * @param recomputed from what is stored now, over all before it
     */
    public record Link(int number, String body, String recomputed) {}

    /** The log as it is stored, with the chain recomputed from the beginning. */
    public List<Link> recomputed(long batchId) {
        return database.read(sql -> {
            List<Link> links = new ArrayList<>();
            String hash = BatchSql.chainBeginning(sql, batchId);
            for (LogSql.Link link : LogSql.links(sql, batchId)) {
                hash = Chain.link(hash, link.body());
                links.add(new Link(link.number(), link.body(), hash));
            }
            return links;
        });
    }

    /** The code of a batch as lists know it, even where its own record cannot be read any more. */
    public String codeOf(long batchId) {
        return database.read(sql -> sql.first("select code from batch where id = ?", row -> row.text("code"), batchId))
                .orElseThrow(() -> new IllegalArgumentException("there is no batch " + batchId));
    }

    /** The numbers of all batches, oldest first. */
    public List<Long> ids() {
        return database.read(sql -> sql.list("select id from batch order by id", row -> row.integer("id")));
    }

    /** The number of the batch with a code, even where its own record cannot be read any more. */
    public Optional<Long> idOf(String code) {
        return database.read(sql -> sql.first("select id from batch where code = ?", row -> row.integer("id"), code));
    }

    /**
     * Recomputes the chain; the number of the first entry that does not fit, or of the first that is missing.
     */
    public Optional<Integer> firstAltered(long batchId) {
        return database.read(sql -> firstAltered(sql, batchId));
    }

    private static Optional<Integer> firstAltered(Sql sql, long batchId) {
        LogSql.Head head = LogSql.head(sql, batchId);
        String hash = BatchSql.chainBeginning(sql, batchId);
        int expected = 1;
        for (LogSql.Link link : LogSql.links(sql, batchId)) {
            hash = Chain.link(hash, link.body());
            if (link.number() != expected || !hash.equals(link.hash())) {
                return Optional.of(expected);
            }
            expected++;
        }
        return hash.equals(head.hash()) ? Optional.empty() : Optional.of(expected);
    }
}
