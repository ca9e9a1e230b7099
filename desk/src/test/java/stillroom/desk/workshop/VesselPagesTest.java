package stillroom.desk.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.trace.SoldBench;
import stillroom.formulary.batch.Batch;

final class VesselPagesTest {
    @TempDir
    Path folder;

    private SoldBench bench;

    @BeforeEach
    void open() {
        bench = SoldBench.in(folder);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private Batch fresh(String code) {
        return bench.desk()
                .ledger()
                .batches()
                .open(bench.product().id(), Optional.empty(), code, LocalDate.of(2026, 11, 25))
                .orElseThrow();
    }

    @Test
    void aVesselIsDirtyAfterItsBatchAndCleanAfterItsCleaning() {
        assertThat(bench.desk()
                        .post("/workshop/vessels", Map.of("name", "Kettle", "kind", "vessel", "hold", "8"))
                        .status())
                .isEqualTo(303);
        assertThat(bench.desk().get("/workshop/vessels").body()).contains("Nothing is noted about it.");
        bench.made("V-1");
        assertThat(bench.desk().get("/workshop/vessels").body()).contains("Dirty: last held Toner, batch V-1");
        assertThat(bench.desk()
                        .post("/workshop/vessels/Kettle", Map.of("act", "SANITISED", "by", "Ana"))
                        .body())
                .contains("Say with what it was sanitised.");
        bench.desk().post("/workshop/vessels/Kettle", Map.of("act", "SANITISED", "agent", "steam", "by", "Ana"));
        assertThat(bench.desk().get("/workshop/vessels/Kettle").body())
                .contains("Sanitised")
                .contains("with steam");
    }

    @Test
    void theBenchAsksForSanitisingOrAReason() {
        bench.desk().post("/workshop/vessels", Map.of("name", "Kettle", "kind", "vessel", "hold", "8"));
        bench.made("V-1");
        Batch next = fresh("V-2");
        assertThat(bench.desk().get("/batches/" + next.id() + "/bench?do=ready").body())
                .contains("Dirty: last held Toner, batch V-1");
        assertThat(bench.act(next, "log", "ready", "newVessel", "kettle").body())
                .contains("Kettle is not sanitised (dirty: it last held Toner, batch V-1).");
        assertThat(bench.act(next, "log", "ready", "newVessel", "Kettle", "asItIs", "same toner, an hour later")
                        .status())
                .isEqualTo(303);
        Batch third = fresh("V-3");
        assertThat(bench.act(third, "log", "ready", "newVessel", "Kettle", "agent", "alcohol 70 %")
                        .status())
                .isEqualTo(303);
        assertThat(bench.state(third).vessel("Kettle").orElseThrow().clean())
                .contains("Sanitised")
                .contains("alcohol 70 %");
    }

    @Test
    void aVesselThatIsNotOnTheListNeedsCleaningOrAReason() {
        Batch batch = fresh("V-1");
        assertThat(bench.act(batch, "log", "ready", "newVessel", "Jar").body())
                .contains("How it was cleaned is missing.");
        assertThat(bench.act(batch, "log", "ready", "newVessel", "Jar", "asItIs", "a trial, thrown away")
                        .status())
                .isEqualTo(303);
        assertThat(bench.state(batch).vessel("Jar").orElseThrow().asItIs()).contains("a trial, thrown away");
    }

    @Test
    void howLongThingsMayStandIsTheMakersToSet() {
        assertThat(bench.desk()
                        .post(
                                "/workshop/vessels/limits",
                                Map.of("phase", "5", "bulk", "0", "slurry", "2", "premix", "9"))
                        .status())
                .isEqualTo(422);
        bench.desk().post("/workshop/vessels/limits", Map.of("phase", "5", "bulk", "50", "slurry", "2", "premix", "9"));
        assertThat(bench.desk().get("/workshop/vessels").body()).contains("value=\"50\"");
    }

    @Test
    void aSpatulaThatIsTakenIsDirtyAfterwardsAndADirtyOneAsksWhy() {
        bench.desk().post("/workshop/vessels", Map.of("name", "Spatula 1", "kind", "tool", "hold", "8"));
        bench.desk().post("/workshop/vessels/Spatula%201", Map.of("act", "SANITISED", "agent", "steam", "by", "Ana"));
        Batch first = fresh("V-1");
        assertThat(bench.desk()
                        .get("/batches/" + first.id() + "/bench?do=ready")
                        .body())
                .contains("name=\"tool:Spatula 1\"");
        assertThat(bench.act(first, "log", "ready", "newVessel", "Pot", "clean", "washed", "tool:Spatula 1", "on")
                        .status())
                .isEqualTo(303);
        assertThat(bench.state(first).vessel("Pot").orElseThrow().clean()).contains("With Spatula 1: Sanitised");
        assertThat(bench.desk().get("/workshop/vessels").body()).contains("used for batch V-1");
        Batch next = fresh("V-2");
        assertThat(bench.act(next, "log", "ready", "newVessel", "Pot 2", "clean", "washed", "tool:Spatula 1", "on")
                        .body())
                .contains("Spatula 1 is not sanitised (dirty).");
    }
}
