package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.trial.TrialSet;
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
            ledger.drawer(TrialSet.DRAWER, TrialSet.class).write("t0001", trials());
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
                        "fills.csv",
                        "trial_mixtures.csv",
                        "trial_settings.csv",
                        "trial_responses.csv",
                        "viscosity_readings.csv");
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
        assertThat(rows(tables.resolve("trial_mixtures.csv")))
                .extracting(row -> row.getField("component") + " " + row.getField("percent"))
                .containsExactly("Water 75", "Glycerin 5");
        assertThat(rows(tables.resolve("trial_responses.csv")))
                .extracting(row -> row.getField("measured") + ", " + row.getField("scores"))
                .containsExactly("6.5, 6.0 7.0");
        assertThat(rows(tables.resolve("trial_settings.csv")).get(0).getField("setting"))
                .isEqualTo("60.0");
    }

    private static TrialSet trials() {
        TrialSet.Run run = new TrialSet.Run(
                1,
                1,
                1,
                List.of(0.9375, 0.0625),
                List.of(60.0),
                Map.of("Feel", 6.5),
                Map.of("Feel", List.of(6.0, 7.0)),
                "");
        return new TrialSet(
                "t0001",
                "sticky or not",
                new TrialSet.Base(1, 1),
                2,
                List.of(new TrialSet.Component("a", "Water", 70, 78), new TrialSet.Component("b", "Glycerin", 2, 10)),
                80,
                List.of(),
                List.of(new TrialSet.Variable("temperature", 50, 70)),
                List.of(new TrialSet.Response("Feel", "", TrialSet.Aim.LARGER, 0, 5, 10, true)),
                new TrialSet.Chosen("LINEAR", "I", 1, 1),
                List.of(run));
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        Path home = folder.resolve("home");
        Workbench.open(home).close();
        Files.writeString(folder.resolve("precious.csv"), "mine");
        assertThatThrownBy(() -> Ledger.exportTables(home, folder)).isInstanceOf(LedgerException.class);
    }
}
