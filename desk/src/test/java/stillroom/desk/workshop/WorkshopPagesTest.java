package stillroom.desk.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.desk.shell.Law;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.workshop.Workshop;

class WorkshopPagesTest {
    private OpenDesk desk;
    private Path folder;

    @BeforeEach
    void open(@TempDir Path folder) {
        this.folder = folder;
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Map<String, String> settings() {
        Workshop workshop = desk.ledger().settings().read();
        Map<String, String> form = new HashMap<>(SettingsForm.fields(workshop));
        form.put("seen", WorkshopView.mark(workshop));
        return form;
    }

    @Test
    void settingsAreStoredAndStaleOnesAnswered() {
        Map<String, String> form = settings();
        form.putAll(Map.of("name", "Dune <Lane>", "address", "1 Path\n\nTown", "currency", "gbp", "market", "UK"));
        assertThat(desk.post("/workshop", form).location()).isEqualTo("/workshop?did=saved");
        assertThat(desk.ledger().settings().read())
                .isEqualTo(new Workshop("Dune <Lane>", "", List.of("1 Path", "Town"), "UK", "GBP", 2, false));
        assertThat(desk.get("/workshop").body()).contains("Dune &lt;Lane&gt;").doesNotContain("Dune <Lane>");

        form.put("name", "Other");
        Answer stale = desk.post("/workshop", form);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.body()).contains("changed from elsewhere", "value=\"Other\"");
    }

    @Test
    void theMakersOwnCountryMayBeChosen(@TempDir Path laws) throws IOException {
        Path folder = Files.createDirectories(laws.resolve("rules").resolve("nz"));
        Files.writeString(
                folder.resolve("schedule-4.csv"),
                "entry,row,kind,name,substances,products,only_for,not_for,purpose,limit_percent,counting,expressed_as,"
                        + "expressed_molar_mass,ph_min,ph_max,not_with,warning,warning_above_percent,valid_from,"
                        + "valid_until,stock_until,amended_by,source_key,paragraph,read_on,note\n"
                        + "12,,limit,phenoxyethanol,phenoxyethanol,,,,,1,,,,,,,,,,,,,own-copy,item 12,,\n");
        Law.readOwn(laws);
        try {
            assertThat(desk.get("/workshop").body()).contains("NZ, own tables");
            Map<String, String> form = settings();
            form.put("market", "NZ");
            assertThat(desk.post("/workshop", form).status()).isEqualTo(303);
            assertThat(desk.ledger().settings().read().market()).isEqualTo("NZ");
        } finally {
            Law.readOwn(laws.resolve("none"));
        }
    }

    @Test
    void badSettingsAreRefusedBesideTheirFields() {
        Map<String, String> form = settings();
        form.putAll(Map.of("currency", "euros", "market", "MOON", "decimals", "2,5"));
        Answer answer = desk.post("/workshop", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("three letters", "Choose one of the markets", "Decimals must be a whole number")
                .contains("value=\"euros\"");
    }

    @Test
    void repeatabilityIsEstimatedFromTenWeighings() {
        Map<String, String> form = new HashMap<>(Map.of("name", "Bench", "step", "0,01", "maximum", "600"));
        form.put("readings", "50\n50\n50\n50\n50\n50\n50\n50\n50\n50,01");
        assertThat(desk.post("/workshop/balances/new", form).status()).isEqualTo(303);
        // 0.01 g × √0.1, to three digits
        assertThat(desk.ledger().equipment().balances())
                .containsExactly(
                        new Balance("Bench", Grams.of("0.01"), Optional.of(Grams.of("0.00316")), Grams.of("600")));
    }

    @Test
    void badBalancesAreRefusedBesideTheirFields() {
        Answer answer = desk.post(
                "/workshop/balances/new", Map.of("name", "B", "step", "0", "maximum", "x", "readings", "1\n2\nq"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("The step is missing", "The largest load is not a number", "\"q\" is not a weight");
    }

    @Test
    void balancesAreEditedAndTakenOffByPlaceAndName() {
        desk.post("/workshop/balances/new", Map.of("name", "A", "step", "0.1", "maximum", "2000"));
        desk.post("/workshop/balances/new", Map.of("name", "B", "step", "0.01", "maximum", "600"));
        Answer twin =
                desk.post("/workshop/balances/1", Map.of("was", "A", "name", "b", "step", "0.1", "maximum", "2000"));
        assertThat(twin.body()).contains("Another balance bears this name.");
        Answer stale = desk.post("/workshop/balances/2/remove", Map.of("was", "A"));
        assertThat(stale.status()).isEqualTo(409);
        assertThat(desk.post("/workshop/balances/1/remove", Map.of("was", "A")).status())
                .isEqualTo(303);
        assertThat(desk.ledger().equipment().balances())
                .extracting(Balance::name)
                .containsExactly("B");
        assertThat(desk.get("/workshop/balances/2").status()).isEqualTo(404);
        assertThat(desk.get("/workshop/balances/two").status()).isEqualTo(404);
    }

    @Test
    void aCopyIsWrittenAndPutBack() throws IOException {
        desk.post("/workshop/balances/new", Map.of("name", "A", "step", "0.1", "maximum", "2000"));
        assertThat(desk.post("/workshop/backup", Map.of()).status()).isEqualTo(303);
        Path copy = folder.resolve("backups/stillroom-20261125-093000.db");
        assertThat(Files.size(copy)).isPositive();
        assertThat(desk.get("/workshop?did=copied-data").body())
                .contains(copy.getFileName().toString(), "A copy of everything is written");
        desk.post("/workshop/balances/1/remove", Map.of("was", "A"));
        assertThat(desk.post("/workshop/restore", Map.of("copy", "../stillroom.db"))
                        .status())
                .isEqualTo(404);
        assertThat(desk.post(
                                "/workshop/restore",
                                Map.of("copy", copy.getFileName().toString()))
                        .status())
                .isEqualTo(303);
        assertThat(desk.ledger().equipment().balances())
                .extracting(Balance::name)
                .containsExactly("A");
        assertThat(folder.resolve("before-restore.db")).exists();
    }

    @Test
    void onlyADemonstrationIsSetAsideAndOnlyWhenMeant() {
        desk.ledger().settings().write(new Workshop("Own", "", List.of(), "EU", "EUR", 2, false));
        Answer own = desk.post("/workshop/begin", Map.of("sure", "on"));
        assertThat(own.status()).isEqualTo(422);
        assertThat(own.body()).contains("This is not the demonstration workshop");

        desk.ledger().settings().write(new Workshop("Invented", "", List.of(), "EU", "EUR", 2, true));
        assertThat(desk.post("/workshop/begin", Map.of()).body()).contains("Tick the sentence above");
        assertThat(desk.ledger().settings().read().name()).isEqualTo("Invented");

        assertThat(desk.post("/workshop/begin", Map.of("sure", "on")).location())
                .isEqualTo("/workshop?did=begun");
        assertThat(desk.ledger().settings().read()).isEqualTo(Workshop.UNNAMED);
        assertThat(folder.resolve("set-aside-" + OpenDesk.NOW.getEpochSecond() + ".db"))
                .exists();
    }
}
