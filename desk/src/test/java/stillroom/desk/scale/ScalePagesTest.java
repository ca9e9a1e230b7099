package stillroom.desk.scale;

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
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;

class ScalePagesTest {
    @TempDir
    Path folder = Path.of("");

    @TempDir
    Path wires = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        desk.ledger()
                .equipment()
                .writeBalances(List.of(
                        new Balance("Bench", Grams.of("0.01"), Optional.of(Grams.of("0.02")), Grams.of("600"))));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Map<String, String> form(String... more) {
        Map<String, String> form = new HashMap<>(
                Map.of("was", "Bench", "name", "Bench", "step", "0.01", "maximum", "600", "repeatability", "0.02"));
        for (int i = 0; i < more.length; i += 2) {
            form.put(more[i], more[i + 1]);
        }
        return form;
    }

    @Test
    void theLineOfThisComputerIsRead() throws IOException {
        Path wire = wires.resolve("wire");
        Files.writeString(wire, "rubbish\r\n  12.30 g\r\n 12.34 g\r\n 99.9");
        assertThat(desk.post("/workshop/balances/1", form("live", "yes", "device", wire.toString()))
                        .status())
                .isEqualTo(303);

        assertThat(desk.get("/scales/Bench/weight").body()).isEqualTo("{\"grams\":\"12.34\",\"stable\":true}");
        Files.writeString(wire, "nothing that is a weight\n");
        assertThat(desk.get("/scales/Bench/weight").body()).isEqualTo("{}");
        Files.delete(wire);
        assertThat(desk.get("/scales/Bench/weight").body()).as("pulled out").isEqualTo("{}");
    }

    @Test
    void aLineFromTheBrowserIsReadByTheBalancesPattern() {
        desk.post(
                "/workshop/balances/1",
                form("live", "yes", "pattern", "(?:S|D) (?<value>[+-]?[0-9.]+) (?<unit>g)", "moving", "D "));

        assertThat(desk.post("/scales/Bench/line", Map.of("line", "S 5.01 g")).body())
                .isEqualTo("{\"grams\":\"5.01\",\"stable\":true}");
        assertThat(desk.post("/scales/Bench/line", Map.of("line", "D 5.01 g")).body())
                .contains("\"stable\":false");
        assertThat(desk.post("/scales/Bench/line", Map.of("line", "S 5.0")).body())
                .isEqualTo("{}");
        assertThat(desk.get("/scales/Bench/weight").status()).isEqualTo(404);
        assertThat(desk.get("/scales/Other/weight").status()).isEqualTo(404);
    }

    @Test
    void aPatternThatCannotBeReadIsRefusedAndKept() {
        Answer refused = desk.post("/workshop/balances/1", form("live", "yes", "pattern", "(?<value>[0-9"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("This pattern cannot be read");
    }

    @Test
    void theBalanceSaysTheLeastThatItWeighsAndHowItsCheckWent() {
        // 200 x 0.02 g / 2 % = 2 g; the pharmacopoeial figure is 2000 x 0.02 g = 40 g (USP general chapter 41).
        assertThat(desk.get("/workshop/balances/1").body())
                .contains(
                        "± 2 %</th><td class=\"number\">2</td>",
                        "<td class=\"number\">40</td>", "It was not checked yet");
        assertThat(desk.post("/workshop/balances/1/check", Map.of("reference", "200", "shown", "", "by", "Ada"))
                        .body())
                .contains("What did the balance show?");
        desk.post("/workshop/balances/1/check", Map.of("reference", "200", "shown", "200.03", "by", "Ada"));
        assertThat(desk.get("/workshop/balances/1").body()).contains("0.03 g off. Within twice its repeatability.");
        desk.post("/workshop/balances/1/check", Map.of("reference", "200", "shown", "199.9", "by", "Ada"));
        assertThat(desk.get("/workshop/balances/1").body()).contains("level it, let it warm up");
        desk.post("/workshop/balances/1", form());
        assertThat(desk.ledger().equipment().balances().get(0).check())
                .as("saving keeps the check")
                .isPresent();
    }
}
