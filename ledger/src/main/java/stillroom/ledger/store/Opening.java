package stillroom.ledger.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;

/** Looks at a file before anything touches it, and brings it up to date. */
final class Opening {
    private Opening() {}

    static void prepare(Path file) {
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw new LedgerException("The file " + file + " cannot be written.");
        }
        switch (look(file)) {
            case CURRENT -> {}
            case EMPTY -> Migrations.run(file);
            case OLDER -> {
                Copies.copy(file, free(file.resolveSibling("before-update.db")));
                Migrations.run(file);
            }
            case NEWER ->
                throw new LedgerException(
                        "The file " + file + " was written by a newer version of Stillroom; use that version.");
            case FOREIGN -> throw new LedgerException("The file " + file + " is a database, but not of Stillroom.");
        }
    }

    static Migrations.Standing look(Path file) {
        return Sql.asked(() -> {
            try (Connection connection = Connections.plain(file)) {
                return Migrations.standing(new Sql(connection));
            }
        });
    }

    /** The path itself, or the first of "name-2.db", "name-3.db" ... that does not exist yet. */
    static Path free(Path wanted) {
        String name = wanted.getFileName().toString().replaceFirst("\\.db$", "");
        Path path = wanted;
        for (int i = 2; Files.exists(path); i++) {
            path = wanted.resolveSibling(name + "-" + i + ".db");
        }
        return path;
    }
}
