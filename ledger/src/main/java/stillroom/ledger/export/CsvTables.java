package stillroom.ledger.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import stillroom.formulary.trial.TrialSet;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.formula.ProductShelf;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.material.MaterialShelf;

/** The workshop as CSV tables that any spreadsheet opens. The columns are documented in {@code docs/file-format.md}. */
public record CsvTables(
        ProductShelf products,
        MaterialShelf materials,
        LotBook lots,
        BatchBook batches,
        List<TrialSet> trials,
        List<ViscosityCurve> curves) {
    public CsvTables {
        trials = List.copyOf(trials);
        curves = List.copyOf(curves);
    }

    /**
     * Writes the tables into a folder.
     *
     * @return the files
     */
    public List<Path> write(Path folder) throws IOException {
        Csv csv = new Csv(folder);
        CardNames names = new CardNames(materials.book());
        new FormulaTables(csv, products, names).write();
        new ShelfTables(csv, materials, lots, names).write();
        new BatchTables(csv, batches, products, names).write();
        new TrialTables(csv, trials, curves).write();
        return csv.written();
    }
}
