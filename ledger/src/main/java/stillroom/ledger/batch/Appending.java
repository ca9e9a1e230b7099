package stillroom.ledger.batch;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.Chain;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Sql;

/** One entry into one log, with all that follows from it. */
final class Appending {
    private Appending() {}

    /** The entry that the request made, now or earlier; {@code wanted} carries no number yet. */
    static LogEntry append(Sql sql, long batchId, String requestId, LogEntry wanted) {
        Optional<LogEntry> made = LogSql.made(sql, batchId, requestId);
        if (made.isEmpty()) {
            return added(sql, batchId, requestId, wanted);
        }
        if (!sameAct(made.get(), wanted)) {
            throw new IllegalArgumentException("request " + requestId + " has already made entry "
                    + made.get().number() + ", a different one");
        }
        return made.get();
    }

    /** The second tap comes later, so the time may differ; what was done and by whom may not. */
    private static boolean sameAct(LogEntry made, LogEntry wanted) {
        return made.event().equals(wanted.event()) && made.by().equals(wanted.by());
    }

    private static LogEntry added(Sql sql, long batchId, String requestId, LogEntry wanted) {
        LogSql.Head head = LogSql.head(sql, batchId);
        LogEntry entry = new LogEntry(head.entries() + 1, wanted.at(), wanted.by(), wanted.event());
        checkStrike(entry);
        String body = Json.write(entry);
        String hash = Chain.link(head.hash(), body);
        LogSql.insert(sql, batchId, requestId, entry, new LogSql.Link(entry.number(), body, hash));
        LotUseSql.book(sql, batchId, entry);
        TouchSql.book(sql, batchId, entry);
        List<LogEntry> log = LogSql.log(sql, batchId);
        BatchState state = BatchState.of(log);
        if (entry.event() instanceof BatchEvent.Struck || entry.event() instanceof BatchEvent.LotsNamed) {
            LotUseSql.strike(sql, batchId, state.unbooked());
        }
        if (entry.event() instanceof BatchEvent.Struck) {
            TouchSql.rebook(
                    sql,
                    batchId,
                    log.stream()
                            .filter(one -> !state.struck().contains(one.number()))
                            .toList());
        }
        LogSql.summarise(sql, batchId, state, entry, hash);
        return entry;
    }

    private static void checkStrike(LogEntry entry) {
        if (entry.event() instanceof BatchEvent.Struck strike
                && (strike.entry() < 1 || strike.entry() >= entry.number())) {
            throw new IllegalArgumentException(
                    "entry " + strike.entry() + " is not in the log, so it cannot be struck");
        }
    }
}
