package stillroom.ledger.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;

/** Batches and their logs. What stands in a log stays there: a mistake is struck by a later entry. */
public final class BatchBook {
    /** A free code for a batch opened on this day, such as 261125-1; nothing is reserved. */
    public String proposeCode(LocalDate day) {
        throw new UnsupportedOperationException();
    }

    /**
     * Opens a batch with an empty log.
     *
     * @param version a kept version; none when weighed free hand
     * @return empty (and nothing stored) where the code is taken
     */
    public Optional<Batch> open(long productId, Optional<Integer> version, String code, LocalDate openedOn) {
        throw new UnsupportedOperationException();
    }

    public Optional<Batch> batch(long id) {
        throw new UnsupportedOperationException();
    }

    public Optional<Batch> byCode(String code) {
        throw new UnsupportedOperationException();
    }

    /** The batch as lists show it, with its stage. */
    public Optional<BatchRow> row(long id) {
        throw new UnsupportedOperationException();
    }

    /**
     * Adds an entry to the log. It is on disk when this returns.
     *
     * @param requestId made by the page for this one act: the same request again returns the entry that it made
     */
    public LogEntry append(long batchId, String requestId, Instant at, String by, BatchEvent event) {
        throw new UnsupportedOperationException();
    }

    /** The whole log, oldest first. */
    public List<LogEntry> log(long batchId) {
        throw new UnsupportedOperationException();
    }

    /** The batches that are not yet released or rejected, those due first, then the newest. */
    public List<BatchRow> unfinished() {
        throw new UnsupportedOperationException();
    }

    /** One page of a list, newest first. */
    public BatchPage page(BatchQuery query, int offset, int size) {
        throw new UnsupportedOperationException();
    }

    /** The batches made from a version, newest first. */
    public List<BatchRow> fromVersion(long productId, int number) {
        throw new UnsupportedOperationException();
    }

    /** Every batch that holds some of a lot, newest first. */
    public List<LotUse> holding(String lotCode) {
        throw new UnsupportedOperationException();
    }

    /** The hash of the newest entry, as 64 hexadecimal digits, which covers the whole log; empty for an empty log. */
    public Optional<String> headHash(long batchId) {
        throw new UnsupportedOperationException();
    }

    /** Recomputes the chain; the number of the first entry that does not fit, if any. */
    public Optional<Integer> firstAltered(long batchId) {
        throw new UnsupportedOperationException();
    }
}
