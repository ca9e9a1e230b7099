package stillroom.desk.batches.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import stillroom.desk.shell.Frame.RunningTimer;
import stillroom.desk.shell.Workspace;
import stillroom.formulary.batch.BatchState;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchRow;

/**
 * The timers that run in all unfinished batches. Every page shows them, so a batch is folded again only when its log has
 * grown, and the list of batches is asked at most every two seconds. Thread-safe.
 */
public final class RunningTimers implements Supplier<List<RunningTimer>> {
    private static final long FRESH_NANOS = 2_000_000_000L;

    private final Workspace workspace;
    private final Map<Long, Folded> folded = new ConcurrentHashMap<>();
    private volatile Known known = new Known(List.of(), 0, false);

    public RunningTimers(Workspace workspace) {
        this.workspace = workspace;
    }

    private record Folded(int entries, List<RunningTimer> timers) {}

    private record Known(List<RunningTimer> timers, long at, boolean valid) {}

    /** Something was written: the next page asks again. */
    public void forget() {
        known = new Known(List.of(), 0, false);
    }

    @Override
    public List<RunningTimer> get() {
        Known last = known;
        long now = System.nanoTime();
        if (last.valid() && now - last.at() < FRESH_NANOS) {
            return last.timers();
        }
        Ledger ledger = workspace.ledger();
        List<RunningTimer> timers = new ArrayList<>();
        for (BatchRow row : ledger.batches().unfinished()) {
            timers.addAll(ofBatch(ledger, row));
        }
        known = new Known(List.copyOf(timers), now, true);
        return known.timers();
    }

    private List<RunningTimer> ofBatch(Ledger ledger, BatchRow row) {
        long id = row.batch().id();
        Folded before = folded.get(id);
        if (before != null && before.entries() == row.entries()) {
            return before.timers();
        }
        List<RunningTimer> timers = BatchState.of(ledger.batches().log(id)).timers().stream()
                .map(timer -> new RunningTimer(
                        id,
                        row.batch().code(),
                        timer.event().timer(),
                        timer.event().vessel(),
                        timer.event().label(),
                        timer.event().until()))
                .toList();
        folded.put(id, new Folded(row.entries(), timers));
        return timers;
    }
}
