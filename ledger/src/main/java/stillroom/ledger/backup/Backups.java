package stillroom.ledger.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillroom.ledger.store.Copies;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.LedgerException;

/**
 * The copies of one workshop, in a folder beside its file. May be used while the workshop is open, here or elsewhere.
 *
 * @param home the workshop's folder
 */
public record Backups(Path home) {
    public Path folder() {
        return home.resolve("backups");
    }

    /** The copies, newest first. Other files in the folder are passed over. */
    public List<Backup> all() {
        if (!Files.isDirectory(folder())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder())) {
            return files.flatMap(file -> Backup.read(file).stream())
                    .sorted(Comparator.comparing(Backup::at).reversed())
                    .toList();
        } catch (IOException unreadable) {
            throw new LedgerException("The folder for copies cannot be read: " + folder(), unreadable);
        }
    }

    public Optional<Backup> named(String name) {
        return all().stream().filter(copy -> copy.name().equals(name)).findFirst();
    }

    /** Writes a copy under the name of this second; a copy of the same second stands already and is the answer. */
    public Backup write(LocalDateTime now) {
        return write(Backup.in(folder(), now, false));
    }

    private Backup write(Backup copy) {
        if (!Files.exists(copy.file())) {
            Copies.copyOf(home, copy.file());
        }
        return copy;
    }

    /** Whether a new day has begun since the last copy, and something was written since it. */
    public boolean due(LocalDateTime now, ZoneId zone) {
        Optional<LocalDateTime> last = all().stream().map(Backup::at).findFirst();
        return last.isEmpty()
                || (last.get().toLocalDate().isBefore(now.toLocalDate()) && changedSince(last.get(), zone));
    }

    /**
     * Whether the file or its write-ahead log is younger than a moment. A second is allowed for, because names carry whole
     * seconds: rather one copy too many.
     */
    public boolean changedSince(LocalDateTime moment, ZoneId zone) {
        return Stream.of(Database.FILE_NAME, Database.FILE_NAME + "-wal")
                .map(home::resolve)
                .filter(Files::exists)
                .anyMatch(file -> !written(file, zone).isBefore(moment.truncatedTo(ChronoUnit.SECONDS)));
    }

    private static LocalDateTime written(Path file, ZoneId zone) {
        try {
            return LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), zone);
        } catch (IOException unreadable) {
            throw new LedgerException("The file " + file + " cannot be looked at.", unreadable);
        }
    }

    /** Writes an automatic copy, then clears away the automatic ones that it makes superfluous. */
    public Backup writeDaily(LocalDateTime now, Keeping keeping) {
        Backup written = write(Backup.in(folder(), now, true));
        List<Backup> automatic = all().stream().filter(Backup::automatic).toList();
        Set<LocalDateTime> superfluous = Set.copyOf(
                keeping.superfluous(automatic.stream().map(Backup::at).toList()));
        automatic.stream().filter(copy -> superfluous.contains(copy.at())).forEach(Backups::clearAway);
        return written;
    }

    private static void clearAway(Backup copy) {
        try {
            Files.deleteIfExists(copy.file());
        } catch (IOException stuck) {
            throw new LedgerException("The old copy " + copy.file() + " cannot be cleared away.", stuck);
        }
    }
}
