package stillroom.ledger.batch;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.LogEntry;

/**
 * What lists show of a log.
 *
 * @param struck numbers of the entries that do not count: struck by an entry that is not itself struck
 */
record Summary(BatchStage stage, Optional<Instant> due, Set<Integer> struck) {
    Summary {
        struck = Set.copyOf(struck);
    }

    static Summary of(List<LogEntry> log) {
        Set<Integer> struck = struck(log);
        Summary summary = new Summary(BatchStage.PLANNED, Optional.empty(), struck);
        for (LogEntry entry : log) {
            if (!struck.contains(entry.number())) {
                summary = summary.after(entry.event());
            }
        }
        return summary;
    }

    /** Backwards, as a later entry may strike the one that struck. */
    private static Set<Integer> struck(List<LogEntry> log) {
        Set<Integer> struck = new HashSet<>();
        for (int i = log.size() - 1; i >= 0; i--) {
            LogEntry entry = log.get(i);
            if (entry.event() instanceof BatchEvent.Struck strike && !struck.contains(entry.number())) {
                struck.add(strike.entry());
            }
        }
        return struck;
    }

    private Summary after(BatchEvent event) {
        if (event instanceof BatchEvent.RestBegun rest) {
            return new Summary(BatchStage.RESTING, Optional.of(rest.due()), struck);
        }
        if (event instanceof BatchEvent.Decided decided) {
            return at(decided.decision() == BatchEvent.Decision.RELEASED ? BatchStage.RELEASED : BatchStage.REJECTED);
        }
        if (event instanceof BatchEvent.Filled) {
            return at(BatchStage.FILLED);
        }
        return work(event) ? at(BatchStage.IN_WORK) : this;
    }

    private boolean work(BatchEvent event) {
        boolean begins = event instanceof BatchEvent.Begun
                || event instanceof BatchEvent.VesselReady
                || event instanceof BatchEvent.Poured
                || event instanceof BatchEvent.BulkReceived;
        return stage == BatchStage.PLANNED ? begins : event instanceof BatchEvent.RestEnded;
    }

    private Summary at(BatchStage next) {
        return new Summary(next, Optional.empty(), struck);
    }
}
