package stillroom.ledger.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** A few connections that only read, opened when first needed. Safe to use from many threads. */
final class Readers {
    private static final int MOST = 6;

    private final Path file;
    private final Semaphore places = new Semaphore(MOST, true);
    private final Deque<Connection> idle = new ArrayDeque<>();
    private boolean closed;

    Readers(Path file) {
        this.file = file;
    }

    Connection take() throws SQLException {
        places.acquireUninterruptibly();
        try {
            Connection ready = idleOne();
            Connection taken = ready == null ? Connections.reader(file) : ready;
            new Sql(taken).control("begin");
            return taken;
        } catch (SQLException | RuntimeException e) {
            places.release();
            throw e;
        }
    }

    void giveBack(Connection connection) throws SQLException {
        try {
            new Sql(connection).control("rollback");
            putAway(connection);
        } finally {
            places.release();
        }
    }

    /** Waits for those in use, then closes all. */
    void close() throws SQLException {
        places.acquireUninterruptibly(MOST);
        try {
            closeIdle();
        } finally {
            places.release(MOST);
        }
    }

    private synchronized @Nullable Connection idleOne() {
        if (closed) {
            throw new LedgerException("The data file is closed already.");
        }
        return idle.poll();
    }

    private synchronized void putAway(Connection connection) {
        idle.push(connection);
    }

    private synchronized void closeIdle() throws SQLException {
        closed = true;
        for (Connection connection : idle) {
            connection.close();
        }
        idle.clear();
    }
}
