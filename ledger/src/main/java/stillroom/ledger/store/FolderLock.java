package stillroom.ledger.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** The claim of one running copy on a folder. It ends with the process, however that ends. */
public final class FolderLock implements AutoCloseable {
    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Claims a folder, creating it where there is none. */
    public static FolderLock claim(Path folder) {
        FileChannel channel = opened(folder);
        try {
            if (locked(channel) == null) {
                channel.close();
                throw new LedgerException(
                        "Another running copy of Stillroom uses the folder " + folder + "; close it first.");
            }
            return new FolderLock(channel);
        } catch (IOException e) {
            throw notWritable(folder, e);
        }
    }

    private static FileChannel opened(Path folder) {
        try {
            Files.createDirectories(folder);
            return FileChannel.open(
                    folder.resolve("stillroom.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw notWritable(folder, e);
        }
    }

    private static @Nullable FileLock locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private static LedgerException notWritable(Path folder, IOException e) {
        return new LedgerException("The folder " + folder + " cannot be written; choose another with --data.", e);
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new LedgerException("The lock on the folder could not be given back.", e);
        }
    }
}
