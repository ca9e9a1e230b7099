package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the last pour to a pH in its band, on the lotion whose band is 4.8 to 5.4. */
class PhAtTheBenchTest {
    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    private long batch;

    @BeforeEach
    void open() {
        bench = LotionBench.in(folder);
        batch = bench.begin("B-1");
        bench.upToTheAcid(batch);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private String screen(String query) {
        return bench.get("/batches/" + batch + "/bench" + query).body();
    }

    private void acid(String grams, String line) {
        Map<String, String> pour = new java.util.HashMap<>(Map.of(
                "act",
                "weigh",
                "vessel",
                "Kettle",
                "material",
                LotionBench.ACID,
                "purpose",
                "CORRECTION_ACID",
                "lot",
                "A-1",
                "mass",
                grams,
                "balance",
                "Fine scale"));
        if (!line.isEmpty()) {
            pour.put("line", line);
        }
        assertThat(bench.act(batch, pour).status()).isEqualTo(303);
    }

    private void read(String pH) {
        assertThat(bench.act(batch, Map.of("act", "read", "kind", "PH", "vessel", "Kettle", "value", pH))
                        .status())
                .isEqualTo(303);
    }

    @Test
    void aLinePartlyPouredAsksForTheReading() {
        acid("0.8", "l6");
        assertThat(screen(""))
                .contains("Lactic acid 80 %: 0.8 g is in, 1.5 g expected; read now", "0.80 g is in, 1.50 g expected.")
                .contains(">Read now</a>", "do=read&amp;vessel=Kettle&amp;kind=PH");
    }

    @Test
    void aReadingOutsideTheBandLeadsToTheCorrectionAndNotToTheFill() {
        acid("0.8", "l6");
        read("6.1");
        assertThat(screen(""))
                .contains("pH 6.1 is above 5.4: correct", "The band is 4.8 to 5.4, the aim 5.1.")
                .contains("class=\"button big go\" href=\"/batches/" + batch
                        + "/bench?do=weigh&amp;vessel=Kettle&amp;line=l6\"")
                .contains("href=\"/batches/" + batch + "/ph?vessel=Kettle\"")
                .doesNotContain("Fill from Kettle", "nothing open");
        assertThat(bench.get("/batches/" + batch).body()).contains("Kettle: pH 6.1 is above 5.4: correct");
        assertThat(screen("?do=correct&vessel=Kettle&purpose=CORRECTION_ACID"))
                .contains("Last pH 6.1, read", "The band is 4.8 to 5.4, the aim 5.1.");
        assertThat(screen("?do=correct&vessel=Kettle&purpose=CORRECTION_ACID&material=" + LotionBench.ACID))
                .contains("Last pH 6.1, read");

        acid("0.3", "");
        assertThat(screen("")).contains("Read the pH: it was corrected since", "The product's band: pH 4.8");
    }

    @Test
    void belowTheBandAnAcidIsNotWhatHelps() {
        acid("1.4", "l6");
        read("4.5");
        assertThat(screen(""))
                .contains("pH 4.5 is below 4.8: correct", "Correct with a base", "purpose=CORRECTION_BASE")
                .doesNotContain("Add Lactic acid");
    }

    @Test
    void insideTheBandTheRestComesBeforeTheFill() {
        acid("1.2", "l6");
        read("5.1");
        String screen = screen("");
        assertThat(screen).contains("let it rest and look again before you fill");
        assertThat(screen.indexOf(">Let it rest</a>")).isLessThan(screen.indexOf(">Fill from Kettle</a>"));
        assertThat(screen)
                .contains("class=\"button big go\" href=\"/batches/" + batch + "/bench?do=rest&amp;vessel=Kettle\"");

        bench.act(batch, Map.of("act", "rest", "due", "2026-11-26T09:00"));
        bench.act(batch, Map.of("act", "look", "note", "clear"));
        assertThat(screen("")).contains("class=\"button big go\" href=\"/batches/" + batch + "/fill\"");
    }

    @Test
    void theMakerMayLeaveThePhAsItIs() {
        acid("1.2", "l6");
        read("5.6");
        assertThat(screen("")).contains("The pH stays as it is");
        bench.act(batch, Map.of("act", "accept", "line", "l6", "reason", "a trial for the feel only"));
        assertThat(screen("")).contains("Fill from Kettle").doesNotContain("5.6 is above");
    }
}
