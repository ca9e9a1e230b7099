package stillroom.ledger.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The data file: one writer, many readers. Safe to use from many threads. Work that is begun inside other work of the same
 * thread joins its transaction.
 */
public final class Database implements AutoCloseable {
    /** Name of the file within its folder. */
    public static final String FILE_NAME = "stillroom.db";

    private final Path file;
    private final FolderLock claim;
    private final Connection writer;
    private final Readers readers;
    private final ReentrantLock writing = new ReentrantLock(true);

    // Not static: one thread may work with two data files, as when one is compared with its copy.
    @SuppressWarnings("ThreadLocalUsage")
    private final ThreadLocal<@Nullable Transaction> current = new ThreadLocal<>();

    /** What a thread is in the middle of. */
    private static final class Transaction {
        private final Sql sql;
        private final boolean writes;
        private boolean spoilt;

        Transaction(Sql sql, boolean writes) {
            this.sql = sql;
            this.writes = writes;
        }
    }

    private Database(Path file, FolderLock claim, Connection writer) {
        this.file = file;
        this.claim = claim;
        this.writer = writer;
        this.readers = new Readers(file);
    }

    /** Claims the folder and opens its file, creating or migrating it where needed. */
    public static Database open(Path folder) {
        FolderLock claim = FolderLock.claim(folder);
        try {
            Path file = folder.resolve(FILE_NAME);
            Opening.prepare(file);
            return new Database(file, claim, Sql.asked(() -> Connections.writer(file)));
        } catch (RuntimeException e) {
            claim.close();
            throw e;
        }
    }

    /** Answers from one consistent moment; inside a write, from what was written so far. */
    public <T> T read(Function<Sql, T> work) {
        Transaction outer = current.get();
        if (outer != null) {
            return work.apply(outer.sql);
        }
        Connection connection = Sql.asked(readers::take);
        try {
            return within(new Transaction(new Sql(connection), false), work);
        } finally {
            Sql.asked(() -> {
                readers.giveBack(connection);
                return true;
            });
        }
    }

    /** Changes everything that the work changes, or nothing where it throws. On disk when this returns. */
    public <T> T write(Function<Sql, T> work) {
        Transaction outer = current.get();
        if (outer != null) {
            return joined(outer, work);
        }
        writing.lock();
        try {
            return committed(new Transaction(new Sql(writer), true), work);
        } finally {
            writing.unlock();
        }
    }

    private static <T> T joined(Transaction outer, Function<Sql, T> work) {
        if (!outer.writes) {
            throw new IllegalStateException("a write was begun inside a read");
        }
        try {
            return work.apply(outer.sql);
        } catch (RuntimeException | Error e) {
            outer.spoilt = true;
            throw e;
        }
    }

    private <T> T committed(Transaction transaction, Function<Sql, T> work) {
        transaction.sql.control("begin immediate");
        try {
            T answer = within(transaction, work);
            if (transaction.spoilt) {
                throw new IllegalStateException("a part of this work failed, so none of it is stored");
            }
            transaction.sql.control("commit");
            return answer;
        } catch (RuntimeException | Error e) {
            rollBack(transaction, e);
            throw e;
        }
    }

    /** The first failure is the one to tell of; the file rolls back by itself after some. */
    private static void rollBack(Transaction transaction, Throwable because) {
        try {
            transaction.sql.control("rollback");
        } catch (LedgerException e) {
            because.addSuppressed(e);
        }
    }

    private <T> T within(Transaction transaction, Function<Sql, T> work) {
        current.set(transaction);
        try {
            return work.apply(transaction.sql);
        } finally {
            current.remove();
        }
    }

    /** Writes a consistent copy to a new file while work goes on. */
    public void copyTo(Path target) {
        Copies.copy(file, target);
    }

    /** The file itself. */
    public Path file() {
        return file;
    }

    @Override
    public void close() {
        writing.lock();
        try (claim) {
            Sql.asked(() -> {
                readers.close();
                writer.close();
                return true;
            });
        } finally {
            writing.unlock();
        }
    }

    /** Whether a folder holds a data file already. */
    public static boolean existsIn(Path folder) {
        return Files.exists(folder.resolve(FILE_NAME));
    }
}
