package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.batch.LotUse;

/** Dividing and blending, what a larger batch changes, and what happened the last times. */
class BulkPagesTest {
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

    private Answer handOver(long from, String... fields) {
        Map<String, String> form = new HashMap<>(Map.of("by", "Ada", "vessel", "Kettle"));
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        form.putIfAbsent("requestId", java.util.UUID.randomUUID().toString());
        return bench.post("/batches/" + from + "/bulk", form);
    }

    @Test
    void aBulkIsDividedAndEachPartKnowsWhatIsInIt() {
        Grams whole = bench.state(batch).inVessels().net();
        assertThat(bench.get("/batches/" + batch + "/bulk").body()).contains("A new batch of Hand lotion");

        Answer done = handOver(batch, "mass", "200", "to", "", "code", "B-1a", "newVessel", "Jug", "clean", "washed");
        assertThat(done.status()).isEqualTo(303);
        long child = bench.ledger().batches().byCode("B-1a").orElseThrow().id();
        assertThat(bench.state(child).inVessels().net().doubleValue())
                .isCloseTo(200, org.assertj.core.api.Assertions.offset(1e-9));
        assertThat(bench.state(batch).inVessels().net().doubleValue())
                .isCloseTo(whole.doubleValue() - 200, org.assertj.core.api.Assertions.offset(1e-9));
        assertThat(bench.ledger().batches().holding("O-1"))
                .extracting(LotUse::row)
                .extracting(row -> row.batch().code())
                .contains("B-1", "B-1a");
        assertThat(bench.ledger().lots().lot("O-1").orElseThrow().onHand())
                .as("the lot is charged once")
                .isEqualTo(Grams.of("-20"));

        // Back into the parent: the two are blended again.
        Answer back = handOver(child, "vessel", "Jug", "mass", "50", "to", "B-1/Kettle");
        assertThat(back.status()).isEqualTo(303);
        assertThat(bench.state(batch).inVessels().net().doubleValue())
                .isCloseTo(whole.doubleValue() - 150, org.assertj.core.api.Assertions.offset(1e-9));
    }

    @Test
    void moreThanIsThereIsRefusedAndNoBatchIsLeftBehind() {
        Answer refused =
                handOver(batch, "mass", "9000", "to", "", "code", "B-1b", "newVessel", "Jug", "clean", "washed");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("9000 g is more than is in Kettle");
        assertThat(bench.ledger().batches().byCode("B-1b")).isEmpty();
        assertThat(handOver(batch, "mass", "", "to", "", "code", "", "newVessel", "", "clean", "")
                        .body())
                .contains("How much is handed over?", "The code of the new batch is missing");
    }

    @Test
    void aMuchLargerBatchSaysWhatChanges() {
        assertThat(bench.get("/products/1/versions/1/plan?by=mass&mass=500").body())
                .doesNotContain("times the largest batch so far");
        assertThat(bench.get("/products/1/versions/1/plan?by=mass&mass=20000").body())
                .contains(
                        "Against the batches so far",
                        "times the largest batch so far",
                        "Cooling takes at least 3.4 times");
    }

    @Test
    void theLastTimesStandBesideTheNext() {
        long next = bench.begin("B-2");
        bench.readyBoth(next);
        assertThat(bench.get("/batches/" + next + "/bench?do=weigh&vessel=Kettle&line=l2")
                        .body())
                .contains("B-1: 25.4 g, 5.09 % of 498.9 g");
        assertThat(bench.get("/batches/" + next + "/bench?do=step&vessel=Kettle&step=s1")
                        .body())
                .contains("B-1: 75 °C");
    }
}
