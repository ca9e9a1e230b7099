package stillroom.desk.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Workspace;
import stillroom.ledger.store.LedgerException;

/** Copies of the data in the folder beside it. */
record Copies(Workspace workspace, ZoneId zone) {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");
    private static final int SHOWN = 10;

    Path folder() {
        return workspace.folder().resolve("backups");
    }

    /** Writes a copy under a name of its own and says where it lies. */
    Path write(Instant now) {
        Path file = folder().resolve("stillroom-" + NAME.format(now.atZone(zone)) + ".db");
        try {
            Files.createDirectories(folder());
        } catch (IOException stuck) {
            throw new LedgerException("The folder for copies cannot be made: " + folder(), stuck);
        }
        if (!Files.exists(file)) {
            workspace.ledger().backupTo(file);
        }
        return file;
    }

    /** The newest copies, newest first. */
    List<WorkshopPage.Copy> newest() {
        if (!Files.isDirectory(folder())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder())) {
            return files.filter(file -> file.getFileName().toString().endsWith(".db"))
                    .sorted(Comparator.comparing(Path::getFileName).reversed())
                    .limit(SHOWN)
                    .map(this::copy)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private WorkshopPage.Copy copy(Path file) {
        try {
            return new WorkshopPage.Copy(
                    file.toString(),
                    Format.moment(Files.getLastModifiedTime(file).toInstant(), zone),
                    Format.figure(Files.size(file) / 1e6, 1) + " MB");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
