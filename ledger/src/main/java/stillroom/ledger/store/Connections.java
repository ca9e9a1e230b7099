package stillroom.ledger.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;

/** How the file is opened. */
final class Connections {
    private static final int BUSY_MILLISECONDS = 5000;

    private Connections() {}

    static String url(Path file) {
        return "jdbc:sqlite:" + file.toAbsolutePath();
    }

    /** Without any setting that would touch the file: for looking at it first. */
    static Connection plain(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLISECONDS);
        return config.createConnection(url(file));
    }

    /** The one connection that writes: each commit is on disk before it returns. */
    static Connection writer(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.enforceForeignKeys(true);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        return config.createConnection(url(file));
    }

    /** A connection that cannot write. */
    static Connection reader(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setReadOnly(true);
        return config.createConnection(url(file));
    }
}
