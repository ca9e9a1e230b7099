package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.ledger.store.LedgerException;

final class CsvTablesTest {
    @TempDir
    Path folder;

    private static List<NamedCsvRecord> rows(Path file) throws IOException {
        String text = Files.readString(file);
        assertThat(text).startsWith("\uFEFF");
        try (Stream<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text.substring(1)).stream()) {
            return rows.toList();
        }
    }

    @Test
    void theTablesSayWhatTheWorkshopHolds() throws IOException {
        Path home = folder.resolve("home");
        try (Ledger ledger = Workbench.open(home)) {
            Batch batch = Workbench.batch(ledger);
            ledger.lots().add(Workbench.lot("G1", "glycerin", "500"));
            ledger.materials().save(Material.named("mine", "=1+1 \"Müller\", comma", Family.OIL));
            ledger.batches().append(batch.id(), "r1", Workbench.MORNING, "Ana", Workbench.poured("G1", "12.34"));
            ledger.batches().append(batch.id(), "r2", Workbench.MORNING, "Ana", Workbench.poured("G1", "1"));
            ledger.batches().append(batch.id(), "r3", Workbench.MORNING, "Ana", new BatchEvent.Struck(2, "spilt"));
        }
        Path tables = folder.resolve("tables");
        assertThat(Ledger.exportTables(home, tables))
                .extracting(file -> file.getFileName().toString())
                .containsExactly(
                        "formulas.csv",
                        "steps.csv",
                        "materials.csv",
                        "compositions.csv",
                        "lots.csv",
                        "batches.csv",
                        "weighings.csv",
                        "readings.csv",
                        "fills.csv");
        List<NamedCsvRecord> lines = rows(tables.resolve("formulas.csv"));
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).getField("qs")).isEqualTo("100");
        assertThat(lines.get(1).getField("percent")).isEqualTo("5");
        assertThat(rows(tables.resolve("materials.csv")).get(0).getField("name"))
                .as("no spreadsheet runs it")
                .isEqualTo("'=1+1 \"Müller\", comma");
        assertThat(rows(tables.resolve("lots.csv")).get(0).getField("on_hand_grams"))
                .isEqualTo("487.66");
        assertThat(rows(tables.resolve("weighings.csv")))
                .extracting(row -> row.getField("grams") + " " + row.getField("struck"))
                .containsExactly("12.34 no", "1 yes");
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        Path home = folder.resolve("home");
        Workbench.open(home).close();
        Files.writeString(folder.resolve("precious.csv"), "mine");
        assertThatThrownBy(() -> Ledger.exportTables(home, folder)).isInstanceOf(LedgerException.class);
    }
}
