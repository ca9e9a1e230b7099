package stillroom.ledger.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import stillroom.ledger.store.LedgerException;

/**
 * One copy of the workshop, dated by its name.
 *
 * @param at when it was written, by the workshop's clock
 * @param automatic whether the program wrote it by itself; only such copies are ever cleared away
 */
public record Backup(Path file, LocalDateTime at, boolean automatic) {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");
    private static final String BY_HAND = "stillroom-";
    private static final String BY_ITSELF = "daily-";
    private static final String ENDING = ".db";

    static Backup in(Path folder, LocalDateTime at, boolean automatic) {
        String name = (automatic ? BY_ITSELF : BY_HAND) + TIME.format(at) + ENDING;
        return new Backup(folder.resolve(name), at, automatic);
    }

    /** Reads a copy off its name; empty for any other file. */
    static Optional<Backup> read(Path file) {
        String name = file.getFileName().toString();
        boolean automatic = name.startsWith(BY_ITSELF);
        if (!name.endsWith(ENDING) || !(automatic || name.startsWith(BY_HAND))) {
            return Optional.empty();
        }
        String time = name.substring((automatic ? BY_ITSELF : BY_HAND).length(), name.length() - ENDING.length());
        try {
            return Optional.of(new Backup(file, LocalDateTime.parse(time, TIME), automatic));
        } catch (DateTimeException otherwiseNamed) {
            return Optional.empty();
        }
    }

    /** Size of the file. */
    public long bytes() {
        try {
            return Files.size(file);
        } catch (IOException unreadable) {
            throw new LedgerException("The copy " + file + " cannot be looked at.", unreadable);
        }
    }

    public String name() {
        return file.getFileName().toString();
    }
}
