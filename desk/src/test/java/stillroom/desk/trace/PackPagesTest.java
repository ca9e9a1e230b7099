package stillroom.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.ReadingKind;

final class PackPagesTest {
    private static final String BOTTLE = "PET bottle 10 ml";

    @TempDir
    Path folder;

    private SoldBench bench;

    @BeforeEach
    void aShelfOfBottles() {
        bench = SoldBench.in(folder);
        assertThat(bench.desk()
                        .post(
                                "/packs",
                                Map.of(
                                        "name",
                                        BOTTLE,
                                        "material",
                                        "PET",
                                        "liner",
                                        "PE foam",
                                        "capacity",
                                        "12",
                                        "tare",
                                        "5.00",
                                        "tare-deviation",
                                        "0.02",
                                        "hot",
                                        "40",
                                        "compatibility",
                                        "Balm crept out at 40 degrees"))
                        .status())
                .isEqualTo(303);
        bench.desk()
                .post("/packs/PET%20bottle%2010%20ml/lots", Map.of("code", "PET-7", "received", "100", "each", "0.31"));
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private Answer fill(Batch batch, String containers, String total, String note) {
        return bench.act(
                batch,
                "fill",
                "fill",
                "vessel",
                "Kettle",
                "packLot",
                "PET-7",
                "containers",
                containers,
                "total",
                total,
                "note",
                note,
                "sure",
                "on");
    }

    @Test
    void aFillingTakesFromItsLotAndIsTraced() {
        Batch batch = bench.made("P-1");
        assertThat(bench.desk().get("/batches/" + batch.id() + "/fill").body())
                .contains("PET-7 · PET bottle 10 ml · 100 on hand")
                .contains("Balm crept out");
        assertThat(fill(batch, "9", "90", "").status()).isEqualTo(303);
        assertThat(bench.state(batch).fills().get(0).event().packLot()).contains("PET-7");
        assertThat(bench.state(batch).fills().get(0).event().pack()).isEqualTo(BOTTLE);
        assertThat(bench.desk().get("/packs").body()).contains("91 on hand");
        assertThat(bench.desk().get("/trace?q=pet-7").body())
                .contains("container lot pet-7")
                .contains("P-1");
        bench.desk()
                .post(
                        "/packs/PET%20bottle%2010%20ml/count",
                        Map.of("lot", "PET-7", "found", "90", "by", "Ana", "reason", "one cracked"));
        assertThat(bench.desk().get("/packs/PET%20bottle%2010%20ml").body())
                .contains("90 on hand")
                .contains("book off by -1");
    }

    @Test
    void tooHotTooFullAndHeldBackNeedAReason() {
        Batch batch = bench.made("P-1");
        bench.append(
                batch,
                new BatchEvent.ReadingTaken(ReadingKind.TEMPERATURE, "Kettle", Optional.of(55.0), "°C", "", Map.of()));
        assertThat(fill(batch, "9", "90", "").body()).contains("is filled at 40 °C at most");
        bench.append(
                batch,
                new BatchEvent.ReadingTaken(ReadingKind.TEMPERATURE, "Kettle", Optional.of(25.0), "°C", "", Map.of()));
        bench.append(
                batch, new BatchEvent.ReadingTaken(ReadingKind.DENSITY, "", Optional.of(1.0), "g/ml", "", Map.of()));
        assertThat(fill(batch, "7", "90", "").body()).contains("holds 12 ml to the brim");
        bench.desk().post("/packs/PET%20bottle%2010%20ml/hold", Map.of("lot", "PET-7"));
        assertThat(fill(batch, "9", "90", "").body()).contains("Lot PET-7 is held back");
        assertThat(fill(batch, "9", "90", "the lot was checked").status()).isEqualTo(303);
    }

    @Test
    void containersAreCheckedOneByOneAgainstTheTolerableError() {
        Batch batch = bench.made("P-1");
        fill(batch, "9", "90", "");
        // 10 g declared: tolerable negative error 9 %, 0.9 g. Source: Directive 76/211/EEC, Annex I, 2.4.
        assertThat(bench.act(batch, "fill", "check", "nominal", "10", "gross", "15.1\n14.0\n13.1\n15.3 5.2")
                        .status())
                .isEqualTo(303);
        String page = bench.desk().get("/batches/" + batch.id() + "/fill").body();
        assertThat(page)
                .contains("does not hold")
                .contains("short by more than twice the tolerable error: not to be sold")
                .contains("short by more than the tolerable error")
                .contains("tolerable negative error 0.90 g")
                .contains("Content as declared");
        assertThat(bench.act(batch, "fill", "check", "nominal", "10", "gross", "15.1\nfull")
                        .body())
                .contains("Line 2 is not a weight in g");
    }
}
