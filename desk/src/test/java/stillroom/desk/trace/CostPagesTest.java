package stillroom.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;

/** Water at 2 for 1000 g, 100 g a batch: 0.20 of material; all invented. */
final class CostPagesTest {
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

    private String page(Batch batch) {
        return bench.desk().get("/batches/" + batch.id() + "/cost").body();
    }

    @Test
    void aContainerCostsItsShareOfEverything() {
        Batch batch = bench.released("C-1");
        assertThat(bench.act(
                                batch,
                                "cost",
                                "",
                                "minutes",
                                "30",
                                "hour",
                                "18",
                                "pack",
                                "0.50",
                                "overhead",
                                "4.80",
                                "margin",
                                "50",
                                "tax",
                                "on")
                        .status())
                .isEqualTo(303);
        // 0.20 material + 10 x 0.50 + 0.5 h x 18 + 4.80 = 19.00; 1.90 a container; 3.80 for half of it margin.
        assertThat(page(batch))
                .contains("<dd>19.00 ")
                .contains("<dd>1.90 ")
                .contains("<dd>3.80 ")
                .contains("All prices with value-added tax.")
                .contains("1 g of it are in no container");
        assertThat(bench.act(batch, "cost", "", "margin", "100").status()).isEqualTo(422);
    }

    @Test
    void goodContainersCarryTheRejectedBatches() {
        Batch lost = bench.made("C-0");
        bench.append(lost, new BatchEvent.Decided(BatchEvent.Decision.REJECTED, "Ana", "clouded", java.util.List.of()));
        Batch batch = bench.released("C-1");
        bench.act(batch, "cost", "", "rejected", "on");
        assertThat(page(batch)).contains("<dd>0.40 ").contains("without value-added tax");
        bench.act(batch, "cost", "");
        assertThat(page(batch)).contains("<dd>0.20 ");
    }

    @Test
    void aDearerMaterialIsShownByProduct() {
        bench.released("C-1");
        assertThat(bench.desk().get("/costs?material=water-purified&percent=50").body())
                .contains("50 % dearer")
                .contains("C-1")
                .contains(">0.0100<")
                .contains(">50.0<");
        assertThat(bench.desk()
                        .get("/costs?material=sodium-benzoate&percent=50")
                        .body())
                .contains("No product that was filled holds any of it");
    }
}
