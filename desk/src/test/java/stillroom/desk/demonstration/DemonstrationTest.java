package stillroom.desk.demonstration;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.ReleaseGate;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.meter.MeterMarks;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.lot.StockedLot;

class DemonstrationTest {
    private OpenDesk desk;

    @BeforeEach
    void fill(@TempDir Path folder) {
        desk = OpenDesk.in(folder);
        OpenDesk.Answer answer = desk.post("/demonstration", Map.of());
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/?did=demonstration");
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Ledger ledger() {
        return desk.ledger();
    }

    private List<BatchRow> batches() {
        return ledger().batches().page(BatchQuery.ALL, 0, 100).rows();
    }

    private BatchRow batch(BatchStage stage) {
        return batches().stream()
                .filter(row -> row.stage() == stage)
                .findFirst()
                .orElseThrow();
    }

    private BatchState state(BatchRow row) {
        return BatchState.of(ledger().batches().log(row.batch().id()));
    }

    private FormulaVersion version(BatchRow row) {
        return ledger().products()
                .version(row.batch().productId(), row.batch().version().orElseThrow())
                .orElseThrow();
    }

    @Test
    void theWorkshopSaysThatItIsInvented() {
        assertThat(ledger().settings().read().demonstration()).isTrue();
        for (String page : List.of("/", "/materials", "/lots", "/workshop")) {
            assertThat(desk.get(page).body()).as(page).contains("Invented data", "Saltmarsh Lane");
        }
        assertThat(desk.get("/workshop").body()).contains("Begin my own workshop");
    }

    @Test
    void itIsNotMixedIntoAWorkshopThatHoldsSomething() {
        int batches = batches().size();
        OpenDesk.Answer again = desk.post("/demonstration", Map.of());
        assertThat(again.status()).isEqualTo(409);
        assertThat(again.body()).contains("holds data of your own");
        assertThat(batches()).hasSize(batches);
    }

    @Test
    void batchesStandAtFourStages() {
        assertThat(batches())
                .extracting(BatchRow::stage)
                .containsExactlyInAnyOrder(
                        BatchStage.RELEASED, BatchStage.RESTING, BatchStage.IN_WORK, BatchStage.PLANNED);
        assertThat(batch(BatchStage.RESTING).due())
                .hasValueSatisfying(due -> assertThat(due).isBefore(OpenDesk.NOW));
        assertThat(state(batch(BatchStage.IN_WORK)).openVessels()).hasSize(2);
        Plan planned = state(batch(BatchStage.PLANNED)).plan().orElseThrow();
        assertThat(planned.shortages())
                .extracting(Plan.Shortage::materialKey)
                .containsExactly("behentrimonium-methosulfate-25");
    }

    @Test
    void logsRunForwardUpToNowAndHoldTogether() {
        for (BatchRow row : batches()) {
            List<Instant> times = ledger().batches().log(row.batch().id()).stream()
                    .map(LogEntry::at)
                    .toList();
            assertThat(times).isSorted().allMatch(at -> !at.isAfter(OpenDesk.NOW));
            assertThat(ledger().batches().firstAltered(row.batch().id())).isEmpty();
        }
    }

    @Test
    void theReleasedBatchMeetsItsGates() {
        BatchRow row = batch(BatchStage.RELEASED);
        FormulaVersion version = version(row);
        Product product = ledger().products().product(row.batch().productId()).orElseThrow();
        MaterialBook book = ledger().materials().book(version.cards());
        AsMade made = AsMade.of(state(row), version.formula(), book);
        assertThat(ReleaseGate.of(state(row), made, version.formula(), product.brief(), List.of(), List.of()))
                .hasSizeGreaterThan(4)
                .allSatisfy(gate -> assertThat(gate.met()).as(gate.says()).isTrue());
        assertThat(Evaluator.standard()
                        .evaluate(
                                made.subject(product.brief(), version.formula(), state(row)),
                                book,
                                OpenDesk.NOW.atZone(ZoneOffset.UTC).toLocalDate())
                        .warnings())
                .isEmpty();
    }

    @Test
    void versionsAreJudgedWithTheirPricesAndWithoutWarning() {
        assertThat(ledger().products().products())
                .as("five products, and the runs of the trials")
                .hasSize(6)
                .allSatisfy(product -> {
                    for (FormulaVersion version : ledger().products().versions(product.id())) {
                        var evaluation = Evaluator.standard()
                                .evaluate(
                                        Subjects.of(version.formula(), product.brief()),
                                        ledger().materials().book(version.cards()),
                                        OpenDesk.NOW.atZone(ZoneOffset.UTC).toLocalDate());
                        assertThat(evaluation.warnings()).as(product.name()).isEmpty();
                        double cost = evaluation.figures().costPer100g().match(known -> known.value(), because -> {
                            throw new AssertionError(product.name() + ": " + because);
                        });
                        assertThat(cost)
                                .as(product.name())
                                .isBetween(
                                        0.01,
                                        product.brief()
                                                .priceCeilingPer100g()
                                                .orElseThrow()
                                                .value()
                                                .doubleValue());
                    }
                });
    }

    @Test
    void noLotHoldsLessThanNothing() {
        assertThat(ledger().lots().all())
                .hasSize(Delivery.ALL.size())
                .extracting(StockedLot::onHand)
                .allMatch(onHand -> onHand.compareTo(Grams.ZERO) >= 0);
        assertThat(desk.get("/materials/sunflower-oil").body()).contains("SUN-01", "expired", "Hand lotion, version 1");
        assertThat(desk.get("/lots/SLE-02").body()).contains("Foaming hand wash", "released");
    }

    @Test
    void noRoomIsEmpty() {
        assertThat(desk.get("/workshop/meter").body()).contains("Bench meter", "and it holds");
        assertThat(desk.get("/workshop/vessels").body())
                .contains("Kettle 3 l", "Sanitised", "Dirty: last held Hand lotion", "used for a batch of trials");
        assertThat(desk.get("/packs").body()).contains("PET bottle with pump, 250 ml", "55");
        assertThat(desk.get("/papers/products/2").body()).contains("Challenge test, version 1");
        assertThat(desk.get("/papers/lots/SLE-02").body()).contains("Certificate of the lot");
        assertThat(desk.get("/").body()).contains("Safety data sheet, sodium laureth sulfate");
        String handWash = "/batches/" + batch(BatchStage.RELEASED).batch().id();
        assertThat(desk.get(handWash + "/units").body())
                .contains("Harbour market, stall 7 (invented)", "The pump sticks", "second shelf");
        String toner = desk.get("/batches/" + batch(BatchStage.RESTING).batch().id() + "/ph")
                .body();
        assertThat(toner).contains("5.66", "5.12", "0.65").doesNotContain("not on record");
    }

    /** What is left after a sample is a share of every weighing, with no end of digits. */
    @Test
    void theWeightOfASampledVesselIsToldAsABalanceWould() {
        String bench = "/batches/" + batch(BatchStage.RESTING).batch().id() + "/bench?do=gross&vessel=Beaker+1+l";
        assertThat(desk.get(bench).body()).containsPattern("it should show <strong>\\d+(\\.\\d{1,3})? g</strong>");
    }

    @Test
    void everyReadingOfAPhStandsUnderACalibrationThatHeld() {
        MeterMarks meters =
                new MeterMarks(ledger().meters().meters(), ledger().meters().calibrations(), ZoneOffset.UTC);
        List<LogEntry> read = batches().stream()
                .flatMap(row -> ledger().batches().log(row.batch().id()).stream())
                .filter(entry ->
                        entry.event() instanceof BatchEvent.ReadingTaken taken && taken.kind() == ReadingKind.PH)
                .toList();
        assertThat(read)
                .hasSizeGreaterThan(6)
                .allSatisfy(entry -> assertThat(meters.of(((BatchEvent.ReadingTaken) entry.event()).how(), entry.at()))
                        .isEmpty());
    }

    @Test
    void theMakersOwnWorkshopBeginsEmpty() {
        desk.post("/workshop/begin", Map.of("sure", "on"));
        assertThat(Saltmarsh.isEmpty(ledger())).isTrue();
        assertThat(desk.get("/workshop").body()).doesNotContain("Invented data");
    }
}
