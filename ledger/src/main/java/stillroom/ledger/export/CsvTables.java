package stillroom.ledger.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.Copies;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.LedgerException;

/**
 * The workshop as CSV tables that any spreadsheet opens. The columns are documented in {@code docs/file-format.md}.
 */
public final class CsvTables {
    private CsvTables() {}

    /**
     * Writes the tables of the workshop in a folder, which may be open meanwhile, into another folder that is empty or new.
     *
     * @return the files
     */
    public static List<Path> write(Path home, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> there = Files.list(folder)) {
            if (there.findAny().isPresent()) {
                throw new LedgerException("The folder " + folder + " is not empty; an export overwrites nothing.");
            }
        }
        Path aside = Files.createTempDirectory("stillroom-export");
        try {
            Copies.copyOf(home, aside.resolve(Database.FILE_NAME));
            try (Ledger copy = Ledger.open(aside)) {
                Csv csv = new Csv(folder);
                CardNames names = new CardNames(copy.materials().book());
                new FormulaTables(csv, copy.products(), names).write();
                new ShelfTables(csv, copy, names).write();
                new BatchTables(csv, copy, names).write();
                return csv.written();
            }
        } finally {
            WorkshopFile.clear(aside);
        }
    }
}
