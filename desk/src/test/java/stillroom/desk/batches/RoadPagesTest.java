package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchEvent.Decided;
import stillroom.formulary.batch.BatchEvent.Filled;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.ledger.workshop.Workshop;

/** As made, filling, the decision, and a batch begun without a formula. */
class RoadPagesTest {
    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    private long batch;

    @BeforeEach
    void open() {
        bench = LotionBench.in(folder);
        batch = bench.begin("B-1");
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private String page(String rest) {
        Answer answer = bench.get("/batches/" + batch + rest);
        assertThat(answer.status()).isEqualTo(200);
        return answer.body();
    }

    /** Both vessels weighed, heated and combined; the preservative and some acid added; pH read. */
    private void make() {
        bench.upToTheAcid(batch);
        bench.act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "vessel",
                        "Kettle",
                        "line",
                        "l6",
                        "mass",
                        "1.2",
                        "lot",
                        "A-1",
                        "purpose",
                        "CORRECTION_ACID",
                        "balance",
                        "Fine scale"));
        bench.act(batch, Map.of("act", "read", "kind", "PH", "vessel", "Kettle", "value", "5.1"));
        bench.act(batch, Map.of("act", "sample", "vessel", "Kettle", "mass", "10.1", "what", "pH reading"));
    }

    private Answer fill(Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.putIfAbsent("requestId", UUID.randomUUID().toString());
        form.putIfAbsent("by", "Ada");
        return bench.post("/batches/" + batch + "/fill", form);
    }

    @Test
    void everyPageOfAFreshBatchAnswers() {
        assertThat(page("")).contains("Make a vessel ready for Water phase", "Nothing was read yet");
        assertThat(page("/as-made")).contains("Nothing was weighed yet");
        assertThat(page("/fill")).contains("No vessel is in use");
        assertThat(bench.get("/batches/" + batch + "/as-made/carry").status()).isEqualTo(404);
    }

    @Test
    void asMadeStandsBesideTheFormulaAndIsJudgedByTheSameCode() {
        make();
        assertThat(bench.get("/batches/" + batch + "/bench?vessel=Kettle").body())
                .contains("Fill from Kettle");

        String made = page("/as-made");
        assertThat(made).contains("+0.4", "+1.6", "Glycerin, vegetable", "Judged as made", "Law as recorded on");
        assertThat(made).contains("10.1 g: pH reading", "1.2 g Lactic acid 80 %", "G-soon");
    }

    @Test
    void aLineToAReadingAndItsCorrectionsAreOneRow() {
        make();
        bench.act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "vessel",
                        "Kettle",
                        "material",
                        LotionBench.ACID,
                        "purpose",
                        "CORRECTION_ACID",
                        "mass",
                        "0.3",
                        "lot",
                        "A-1",
                        "balance",
                        "Fine scale"));
        String made = page("/as-made");
        String row = made.substring(made.indexOf("<th scope=\"row\">Lactic acid 80 %"));
        row = row.substring(0, row.indexOf("</tr>"));
        assertThat(row)
                .contains("up to the reading", "<td class=\"number\">1.5</td><td class=\"number\"></td>")
                .contains("1.5<br><span class=\"soft small\">expected</span>");
        assertThat(made).doesNotContain("beyond the plan");
    }

    @Test
    void aPhThatWasReadIsNotCalledComputed() {
        make();
        assertThat(page("/as-made"))
                .contains("pH, as read", "5.05 to 5.15", "pH, expected")
                .doesNotContain("computed");
        String onPhPage = page("/ph?vessel=Kettle");
        assertThat(onPhPage).contains("By what is in it one expects pH ");
        String expected = onPhPage.substring(onPhPage.indexOf("one expects pH ") + 15);
        assertThat(page("/as-made")).contains(">" + expected.substring(0, expected.indexOf(" (")) + " <small>");
    }

    @Test
    void whatWasMadeBecomesANewVersionOnceHoweverOftenItIsSent() {
        make();
        assertThat(page("/as-made/carry")).contains("q.s. to 100", "Begin the new version", "up to the pH");

        Answer first = bench.post("/batches/" + batch + "/as-made/carry", Map.of());
        assertThat(first.status()).isEqualTo(303);
        assertThat(first.location()).endsWith("/products/1/versions/2?did=carried");
        bench.post("/batches/" + batch + "/as-made/carry", Map.of());
        assertThat(bench.ledger().products().versions(1)).hasSize(2);

        FormulaVersion carried = bench.ledger().products().version(1, 2).orElseThrow();
        assertThat(carried.kept()).isFalse();
        assertThat(carried.basedOn()).contains(1);
        Amount glycerin = carried.formula().line("l2").orElseThrow().amount();
        // 25.4 g of 500.1 g
        assertThat(glycerin).isEqualTo(new Amount.Fixed(Percent.of("5.08")));
    }

    @Test
    void fillingReckonsYieldAndLoss() {
        make();
        Answer bad = fill(Map.of("act", "fill", "vessel", "Kettle", "pack", "", "containers", "1.5", "total", "-3"));
        assertThat(bad.status()).isEqualTo(422);
        assertThat(bad.body())
                .contains(
                        "The container is missing",
                        "must be a whole number",
                        "The total must lie between 0",
                        "value=\"1.5\"");
        assertThat(fill(Map.of("act", "fill", "vessel", "Kettle", "pack", "tube", "containers", "9", "total", "900"))
                        .body())
                .contains("900 g is more than the 490 g in Kettle");

        Map<String, String> form = Map.of(
                "requestId",
                "fill-0000-0001",
                "act",
                "fill",
                "vessel",
                "Kettle",
                "pack",
                "tube 50 ml",
                "containers",
                "9",
                "total",
                "450",
                "retained",
                "30");
        assertThat(fill(form).status()).isEqualTo(303);
        assertThat(fill(form).status()).isEqualTo(303);
        assertThat(bench.state(batch).fills()).singleElement().satisfies(fill -> {
            Filled filled = fill.event();
            assertThat(filled.containers()).isEqualTo(9);
            assertThat(filled.total()).isEqualTo(Grams.of("450"));
        });
        // 450 g of 500.1 g filled; 500.1 - 450 - 30 - 10.1 = 10 g left
        assertThat(page("/fill")).contains("90.0 %", "2.0 %", "9 × tube 50 ml filled from Kettle");
    }

    @Test
    void aMeanThatDoesNotFitTheDeclaredContentAsksBeforeItIsWrittenDown() {
        make();
        Map<String, String> form = new HashMap<>(
                Map.of("act", "fill", "vessel", "Kettle", "pack", "tube 50 ml", "containers", "8", "total", "456"));
        Answer asked = fill(form);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("57 g a container", "1.14 g/ml", "Look at the count", "name=\"sure\"");
        assertThat(bench.state(batch).fills()).isEmpty();

        bench.act(batch, Map.of("act", "read", "kind", "DENSITY", "vessel", "Kettle", "value", "0.98"));
        assertThat(fill(form).body()).contains("8 g more than the declared 50 ml, 49 g by the density read");
        form.put("sure", "on");
        assertThat(fill(form).status()).isEqualTo(303);
        assertThat(page("/fill")).contains("57 g a container.", "8 g more than the declared 50 ml");
    }

    @Test
    void theLabelSaysWhatIsDeclaredUnlessTheContainerIsOfAnotherSize() {
        make();
        bench.post(
                "/products/1/versions/1/label",
                Map.of("productName", "Hand lotion", "netContent", "50 g", "width", "60", "height", "40"));
        Map<String, String> form = new HashMap<>(
                Map.of("act", "fill", "vessel", "Kettle", "pack", "jar 60 ml", "containers", "2", "total", "90"));
        assertThat(fill(form).body()).contains("Short of the declared 50 g by 5 g; more than the tolerable error");
        form.put("pack", "tube 30 ml");
        form.put("total", "60");
        assertThat(fill(form).status()).isEqualTo(303);
        assertThat(page("/fill")).contains("The declared 30 ml would hold this at a density of 1.00 g/ml");
    }

    @Test
    void theLabelGateStaysOpenWhileTheLabelLacksWhatItHasToSay() {
        make();
        assertThat(page("/fill"))
                .contains("The label is open: it lacks name and address of the responsible person, net content")
                .contains("function (unless the presentation shows it)");

        bench.ledger()
                .settings()
                .write(new Workshop("Bench", "A. Maker", List.of("1 Shore Road"), "EU", "EUR", 2, false));
        Map<String, String> label = new HashMap<>(
                Map.of("productName", "Hand lotion", "function", "hand lotion", "width", "60", "height", "40"));
        bench.post("/products/1/versions/1/label", label);
        assertThat(page("/fill"))
                .contains("it lacks net content")
                .doesNotContain("it lacks name and address", "function (unless");
        label.put("netContent", "50 ml");
        bench.post("/products/1/versions/1/label", label);
        assertThat(page("/fill")).doesNotContain("it lacks net content", "responsible person");
    }

    @Test
    void eachOpenGateNeedsAReasonOfItsOwn() {
        make();
        fill(Map.of("act", "fill", "vessel", "Kettle", "pack", "tube", "containers", "9", "total", "450"));
        String page = page("/fill");
        assertThat(page).contains("pH in its band", "The last pH was 5.1", "Release or reject");

        bench.act(batch, Map.of("act", "read", "kind", "PH", "vessel", "Kettle", "value", "6.4"));
        Answer held = fill(Map.of("act", "release"));
        assertThat(held.status()).isEqualTo(422);
        assertThat(held.body()).contains("overrule-ph", "Mend it, or give a reason for going on.");
        assertThat(bench.state(batch).decision()).isEmpty();

        Map<String, String> reasons = new HashMap<>(Map.of("act", "release", "by", "Ben"));
        for (String gate : List.of("ph", "deviations", "steps", "label", "yield", "clean", "record")) {
            reasons.put("overrule-" + gate, "looked at, is fine");
        }
        assertThat(fill(reasons).location()).endsWith("/fill?did=released");
        Decided decided = bench.state(batch).decision().orElseThrow().event();
        assertThat(decided.by()).isEqualTo("Ben");
        assertThat(decided.overruled()).contains("ph: looked at, is fine");
        assertThat(bench.state(batch).stage()).isEqualTo(BatchStage.RELEASED);
        assertThat(bench.weigh(batch, "Kettle", "l2", "1", "").body()).contains("The batch is released");
        assertThat(bench.get("/").body()).doesNotContain("B-1");
    }

    @Test
    void rejectingNeedsNoGateButAReason() {
        make();
        assertThat(fill(Map.of("act", "reject", "reason", "")).body()).contains("Say why the batch is rejected.");
        assertThat(fill(Map.of("act", "reject", "reason", "smells of rancid oil"))
                        .status())
                .isEqualTo(303);
        assertThat(bench.state(batch).stage()).isEqualTo(BatchStage.REJECTED);
        assertThat(page("/fill")).contains("smells of rancid oil", "Strike the decision");
    }

    @Test
    void freeHandBeginsAtTheBenchAndEndsAsAFormula() {
        Map<String, String> form =
                Map.of("product", "", "name", "Trial toner", "type", "TONER", "code", "F-1", "who", "Ada");
        Answer begun = bench.post("/batches/free-hand", form);
        assertThat(begun.status()).isEqualTo(303);
        assertThat(bench.post("/batches/free-hand", form).location()).isEqualTo(begun.location());
        long free = bench.ledger().batches().byCode("F-1").orElseThrow().id();
        bench.act(free, Map.of("act", "ready", "newVessel", "Beaker", "clean", "washed"));
        assertThat(bench.get("/batches/" + free + "/bench").body()).contains("Add to Beaker", "Weigh this");

        for (String[] pour : List.of(
                new String[] {LotionBench.WATER, "94", "W-1"}, new String[] {LotionBench.GLYCERIN, "6", "G-soon"})) {
            assertThat(bench.act(
                                    free,
                                    Map.of(
                                            "act",
                                            "weigh",
                                            "vessel",
                                            "Beaker",
                                            "material",
                                            pour[0],
                                            "purpose",
                                            "LINE",
                                            "mass",
                                            pour[1],
                                            "lot",
                                            pour[2],
                                            "balance",
                                            "Kitchen scale"))
                            .status())
                    .isEqualTo(303);
        }
        bench.post("/batches/" + free + "/as-made/carry", Map.of());
        long product = bench.ledger().batches().batch(free).orElseThrow().productId();
        FormulaVersion carried = bench.ledger().products().newest(product).orElseThrow();
        assertThat(carried.formula().lines())
                .extracting(line -> line.amount())
                .containsExactlyInAnyOrder(new Amount.ToHundred(), new Amount.Fixed(Percent.of("6")));
    }

    @Test
    void freeHandSaysWhatIsMissing() {
        Answer answer = bench.post("/batches/free-hand", Map.of("code", "B-1", "product", "77", "who", ""));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("This product is not on file.", "The name of who weighs is missing");
        assertThat(bench.post("/batches/free-hand", Map.of("code", "B-1", "name", "Other", "who", "Ada"))
                        .body())
                .contains("The code B-1 is taken");
    }

    @Test
    void theListFiltersAndTurnsPages() {
        for (int i = 0; i < 60; i++) {
            bench.ledger().batches().open(1, java.util.Optional.empty(), "X-" + (100 + i), LotionBench.TODAY);
        }
        assertThat(bench.get("/batches").body())
                .contains("1 to 50 of 61", "Older")
                .doesNotContain("Newer");
        assertThat(bench.get("/batches?page=2").body()).contains("51 to 61 of 61", "Newer", "B-1");
        assertThat(bench.get("/batches?code=X-15").body()).contains("1 to 10 of 10");
        assertThat(bench.get("/batches?stage=RELEASED").body()).contains("No batch fits.");
        assertThat(bench.get("/batches?stage=DANCING&page=-3&product=abc").status())
                .isEqualTo(200);
    }
}
