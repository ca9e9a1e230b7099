package stillroom.desk.start;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stillroom.desk.shell.Workspace;
import stillroom.ledger.backup.Backups;
import stillroom.ledger.backup.Keeping;

/**
 * Copies the workshop while the program runs, once on each day on which something was written. Asked every quarter of an
 * hour, because a computer that sleeps at night would miss any fixed hour; and once more at the end.
 */
final class DailyCopies implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(DailyCopies.class);
    private static final long MINUTES_BETWEEN = 15;

    private final Workspace workspace;
    private final Clock clock;
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "daily copies");
        thread.setDaemon(true);
        return thread;
    });

    private DailyCopies(Workspace workspace, Clock clock) {
        this.workspace = workspace;
        this.clock = clock;
    }

    static DailyCopies begin(Workspace workspace, Clock clock) {
        DailyCopies copies = new DailyCopies(workspace, clock);
        copies.timer.scheduleWithFixedDelay(copies::copyIfDue, 1, MINUTES_BETWEEN, TimeUnit.MINUTES);
        return copies;
    }

    /** A copy that cannot be written (a full disk) stops nobody's work; it is tried again, and the trouble is told. */
    void copyIfDue() {
        try {
            Backups backups = new Backups(workspace.folder());
            LocalDateTime now = LocalDateTime.now(clock);
            if (backups.due(now, clock.getZone())) {
                backups.writeDaily(now, Keeping.USUAL);
            }
        } catch (RuntimeException trouble) {
            LOG.warn("The daily copy was not written: {}", trouble.getMessage());
        }
    }

    @Override
    public void close() {
        timer.shutdownNow();
        copyIfDue();
    }
}
