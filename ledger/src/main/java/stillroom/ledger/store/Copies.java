package stillroom.ledger.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.util.Optional;

/** Copies of the whole file, and back. */
public final class Copies {
    private Copies() {}

    /**
     * Writes a consistent copy to a new file; the source may be in use, by this process or another. Either the whole copy
     * stands under that name in the end, or nothing does.
     */
    public static void copy(Path source, Path target) {
        if (Files.exists(target)) {
            throw new LedgerException("The file " + target + " exists already; a backup overwrites nothing.");
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        try {
            Path home = target.toAbsolutePath().getParent();
            if (home != null) {
                Files.createDirectories(home);
            }
            Files.deleteIfExists(part);
            vacuumInto(source, part);
            settle(part, target);
        } catch (IOException e) {
            throw new LedgerException("The backup " + target + " could not be written.", e);
        }
    }

    /** A copy of the file in a folder. */
    public static void copyOf(Path folder, Path target) {
        Path file = folder.resolve(Database.FILE_NAME);
        if (!Files.exists(file)) {
            throw new LedgerException("The folder " + folder + " holds no workshop.");
        }
        copy(file, target);
    }

    private static void vacuumInto(Path source, Path part) {
        Sql.asked(() -> {
            try (Connection connection = Connections.plain(source)) {
                return new Sql(connection)
                        .run("vacuum into ?", part.toAbsolutePath().toString());
            }
        });
    }

    /** Puts a sound copy in the place of a folder's file; what stood there is kept beside it. */
    public static Path restore(Path copy, Path folder) {
        check(copy);
        try (FolderLock claim = FolderLock.claim(folder)) {
            Path file = folder.resolve(Database.FILE_NAME);
            Path part = folder.resolve("restoring.db.part");
            Files.deleteIfExists(part);
            vacuumInto(copy, part);
            Path kept = setAside(file).orElse(folder);
            settle(part, file);
            return kept;
        } catch (IOException e) {
            throw new LedgerException("The backup could not be put into the folder " + folder + ".", e);
        }
    }

    private static void check(Path copy) {
        if (!Files.isRegularFile(copy)) {
            throw new LedgerException("There is no file " + copy + ".");
        }
        Migrations.Standing standing = Opening.look(copy);
        if (standing != Migrations.Standing.CURRENT && standing != Migrations.Standing.OLDER) {
            throw new LedgerException("The file " + copy
                    + (standing == Migrations.Standing.NEWER
                            ? " was written by a newer version of Stillroom."
                            : " is not a backup of Stillroom."));
        }
        if (!sound(copy)) {
            throw new LedgerException("The file " + copy + " is damaged; nothing was restored.");
        }
    }

    private static boolean sound(Path copy) {
        return Sql.asked(() -> {
            try (Connection connection = Connections.plain(copy)) {
                return new Sql(connection)
                        .first("pragma integrity_check", row -> row.text("integrity_check"))
                        .filter("ok"::equals)
                        .isPresent();
            }
        });
    }

    /**
     * Keeps a file with its write-ahead log under another name, and says under which. The file itself stays in its place until
     * the restored one replaces it in one step, so that a crash in between leaves no empty place.
     */
    private static Optional<Path> setAside(Path file) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        Path aside = Opening.free(file.resolveSibling("before-restore.db"));
        Files.copy(file, aside);
        for (String tail : new String[] {"-wal", "-shm"}) {
            Path piece = file.resolveSibling(file.getFileName() + tail);
            if (Files.exists(piece)) {
                Files.move(piece, aside.resolveSibling(aside.getFileName() + tail));
            }
        }
        return Optional.of(aside);
    }

    /** Forces a finished file to disk, then gives it its name in one step. */
    private static void settle(Path part, Path target) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
