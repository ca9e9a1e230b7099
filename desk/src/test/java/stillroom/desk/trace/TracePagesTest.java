package stillroom.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.material.Lot;

final class TracePagesTest {
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

    private BatchStage stage(Batch batch) {
        return bench.desk().ledger().batches().row(batch.id()).orElseThrow().stage();
    }

    @Test
    void aSaleAGiftAReturnAndACountSayWhereTheUnitsAre() {
        Batch batch = bench.released("S-1");
        assertThat(bench.act(
                                batch,
                                "units",
                                "move",
                                "move",
                                "SALE",
                                "units",
                                "6",
                                "to",
                                "Corner shop",
                                "on",
                                "2026-11-25")
                        .status())
                .isEqualTo(303);
        bench.act(batch, "units", "move", "move", "GIFT", "units", "1", "to", "Neighbour");
        bench.act(batch, "units", "move", "move", "RETURN", "units", "2", "to", "Corner shop");
        bench.act(batch, "units", "count", "found", "4");
        String page = bench.desk().get("/batches/" + batch.id() + "/units").body();
        assertThat(page)
                .contains("Corner shop")
                .contains("as counted; by the book 5")
                .contains("Neighbour");
        assertThat(bench.state(batch).units().out()).isEqualTo(5);
        assertThat(bench.state(batch).units().reconciledPercent().orElseThrow()).isEqualByComparingTo("90");
    }

    @Test
    void aUnitThatLeavesNeedsANameARealBatchAndAStock() {
        Batch open = bench.made("S-1");
        assertThat(bench.act(open, "units", "move", "move", "SALE", "units", "1", "to", "Shop")
                        .body())
                .contains("Only units of a released batch leave the workshop.");
        Batch batch = bench.released("S-2");
        assertThat(bench.act(batch, "units", "move", "move", "SALE", "units", "1")
                        .body())
                .contains("Name who has them");
        Answer many = bench.act(batch, "units", "move", "move", "SALE", "units", "11", "to", "Shop");
        assertThat(many.status()).isEqualTo(422);
        assertThat(many.body()).contains("The book has 10 on the shelf").contains("value=\"11\"");
        assertThat(bench.state(batch).units().out()).isZero();
    }

    @Test
    void complaintsReactionsAndSamplesAreKeptApart() {
        Batch batch = bench.released("S-1");
        bench.act(batch, "units", "complaint", "about", "Smells of <rain>");
        bench.act(batch, "units", "reaction", "what", "Red after ten minutes", "serious", "on");
        bench.act(batch, "units", "sample", "samples", "2", "where", "cupboard 3", "keep-until", "2029-11-25");
        assertThat(bench.state(batch).concerns().complaints()).hasSize(1);
        assertThat(bench.state(batch).concerns().reactions().get(0).concern().serious())
                .isTrue();
        assertThat(bench.state(batch).concerns().samples()).hasSize(1);
        String page = bench.desk().get("/batches/" + batch.id() + "/units").body();
        assertThat(page)
                .contains("Serious skin reaction")
                .contains("cupboard 3")
                .contains("&lt;rain&gt;");
        assertThat(bench.desk().get("/trace?q=S-1").body())
                .contains("1 complaints")
                .contains("1 skin reactions")
                .contains("2 retained, cupboard 3");
    }

    @Test
    void oneWordTracesALotAPersonABalanceOrABatch() {
        bench.released("S-1");
        bench.made("S-2");
        assertThat(bench.desk().get("/trace?q=WATER-1").body())
                .contains("lot WATER-1")
                .contains("S-1")
                .contains("S-2")
                .contains("put 1 open batch on hold");
        assertThat(bench.desk().get("/trace?q=ana").body())
                .contains("person ana")
                .contains("S-2");
        assertThat(bench.desk().get("/trace?q=Fine+scale").body()).contains("balance Fine scale");
        assertThat(bench.desk().get("/trace?q=Invented+Waters").body()).contains("supplier Invented Waters");
        assertThat(bench.desk().get("/trace?from=2026-11-25").body())
                .contains("work on 25 Nov 2026")
                .contains("S-1");
        assertThat(bench.desk().get("/trace?from=2026-11-26").body()).contains("It touched nothing");
        assertThat(bench.desk().get("/trace?q=S-1").body())
                .contains("What it was made from")
                .contains("Invented Waters S-77");
        assertThat(bench.desk().get("/trace?q=nothing-like-it").body())
                .contains("Nothing here bears the name \"nothing-like-it\".");
    }

    @Test
    void everythingStopsAtOnceAndGoesOnByNameAndReason() {
        Batch sold = bench.released("S-1");
        Batch open = bench.made("S-2");
        Answer nameless = bench.desk().post("/trace/hold", Map.of("q", "WATER-1", "why", "germs"));
        assertThat(nameless.status()).isEqualTo(422);
        assertThat(stage(open)).isEqualTo(BatchStage.IN_WORK);
        Answer held =
                bench.desk().post("/trace/hold", Map.of("q", "WATER-1", "why", "germs in the water", "by", "Ben"));
        assertThat(held.status()).isEqualTo(303);
        assertThat(stage(open)).isEqualTo(BatchStage.HELD);
        assertThat(stage(sold)).isEqualTo(BatchStage.HELD);
        assertThat(bench.desk()
                        .ledger()
                        .lots()
                        .lot("WATER-1")
                        .orElseThrow()
                        .lot()
                        .state())
                .isEqualTo(Lot.State.QUARANTINE);
        assertThat(bench.act(sold, "units", "move", "move", "SALE", "units", "1", "to", "Shop")
                        .body())
                .contains("No unit leaves until the hold is lifted.");
        assertThat(bench.act(open, "log", "sample", "vessel", "Kettle", "mass", "1", "what", "x")
                        .body())
                .contains("The batch is on hold: germs in the water");
        int entry = bench.state(open).concerns().stops().get(0).number();
        bench.act(open, "units", "go-on", "entry", Integer.toString(entry), "words", "boiled, counted, clear");
        assertThat(stage(open)).isEqualTo(BatchStage.IN_WORK);
    }

    @Test
    void aReleasedBatchIsRecalledAnOpenOneScrapped() {
        Batch sold = bench.released("S-1");
        Batch open = bench.made("S-2");
        assertThat(bench.act(open, "units", "recall", "reason", "x").body())
                .contains("Only a released batch is recalled.");
        bench.act(sold, "units", "recall", "reason", "germs");
        bench.act(open, "units", "scrap", "reason", "germs");
        assertThat(stage(sold)).isEqualTo(BatchStage.RECALLED);
        assertThat(stage(open)).isEqualTo(BatchStage.SCRAPPED);
        assertThat(bench.act(open, "units", "scrap", "reason", "").status()).isEqualTo(422);
    }

    @Test
    void theTraceIsASheetToo() {
        bench.released("S-1");
        Answer sheet = bench.desk().get("/trace.pdf?q=WATER-1");
        assertThat(sheet.status()).isEqualTo(200);
        assertThat(sheet.body()).startsWith("%PDF");
        assertThat(bench.desk().get("/trace.pdf?q=nothing").status()).isEqualTo(404);
    }

    @Test
    void aRowOfLawReachesTheBatchesThatHoldWhatItNames() {
        Batch salty = bench.made("S-1");
        bench.made("S-2");
        bench.desk()
                .ledger()
                .lots()
                .add(new Lot(
                        "BENZ-1",
                        "sodium-benzoate",
                        "",
                        "",
                        stillroom.formulary.quantity.Grams.of("100"),
                        java.time.LocalDate.of(2026, 11, 1),
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        Lot.State.RELEASED,
                        ""));
        bench.append(
                salty,
                new stillroom.formulary.batch.BatchEvent.Poured(
                        "Kettle",
                        java.util.Optional.empty(),
                        "sodium-benzoate",
                        java.util.Optional.of("BENZ-1"),
                        stillroom.formulary.quantity.Grams.of("0.5"),
                        stillroom.formulary.batch.BatchEvent.Purpose.LINE,
                        "Fine scale",
                        "",
                        ""));
        assertThat(bench.desk().get("/trace?q=eu-annex-v-1.b").body())
                .contains("rule eu-annex-v-1.b")
                .contains(">S-1<")
                .doesNotContain(">S-2<");
    }

    @Test
    void whatIsKnownOfAWaterLotStandsOnItsPage() {
        assertThat(bench.desk().get("/lots/WATER-1").body()).contains("Nothing is noted: source");
        assertThat(bench.desk()
                        .post("/lots/WATER-1/water", Map.of("source", "still", "count", "<10"))
                        .body())
                .contains("When was it counted?");
        bench.desk()
                .post(
                        "/lots/WATER-1/water",
                        Map.of(
                                "source",
                                "still",
                                "count",
                                "<10",
                                "counted-on",
                                "2026-11-20",
                                "conductivity",
                                "1.2",
                                "heat",
                                "boiled 10 min"));
        assertThat(bench.desk().get("/lots/WATER-1").body())
                .contains("Last count &lt;10 CFU/ml, 20 Nov 2026")
                .contains("Conductivity 1.2")
                .contains("boiled 10 min");
    }

    @Test
    void theRecordTellsOfStopsSamplesAndWhatStoodTooLong() {
        Batch batch = bench.released("S-1");
        bench.act(batch, "units", "sample", "samples", "2", "where", "cupboard 3", "keep-until", "2029-11-25");
        assertThat(bench.desk().get("/batches/" + batch.id() + "/record.pdf").body())
                .startsWith("%PDF");
    }
}
