package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;

class BatchRulesTest {
    private static final BenchFacts FACTS = new BenchFacts(
            List.of(Workbench.KITCHEN, Workbench.FINE),
            List.of(
                    Workbench.lot("H1", "humectant-1", Lot.State.RELEASED, "2026-12-31"),
                    Workbench.lot("H2", "humectant-1", Lot.State.RELEASED, "2026-02-01"),
                    Workbench.lot("H3", "humectant-1", Lot.State.QUARANTINE, ""),
                    Workbench.lot("H4", "humectant-1", Lot.State.USED_UP, ""),
                    Workbench.lot("S1", "salt-1", Lot.State.RELEASED, "")),
            Workbench.BOOK,
            Workbench.TODAY);

    @Test
    void anOrdinaryPourPasses() {
        assertThat(problems(LogWriter.toner(), pour("beaker", "30", "H1", ""))).isEmpty();
    }

    @Test
    void theBookNeverBlocksTheHand() {
        assertThat(problems(LogWriter.toner(), pour("beaker", "30", "H4", ""))).isEmpty();
        assertThat(problems(LogWriter.toner(), pour("beaker", "30", "", ""))).isEmpty();
    }

    @Test
    void weightsThatCannotBe() {
        assertThat(fields(LogWriter.toner(), pour("beaker", "0", "H1", ""))).containsExactly("mass");
        assertThat(fields(LogWriter.toner(), pour("beaker", "5000.1", "H1", "")))
                .containsExactly("mass");
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "30");
        assertThat(fields(log, pour("beaker", "-30.1", "H1", ""))).containsExactly("mass");
        assertThat(fields(log, pour("beaker", "-30", "H1", ""))).isEmpty();
    }

    @Test
    void vesselsThatAreNotThere() {
        LogWriter log = LogWriter.toner().vessel("jug");
        log.add(new BatchEvent.Combined("jug", "beaker", Optional.empty(), Optional.empty()));
        assertThat(fields(log, pour("bowl", "30", "H1", ""))).containsExactly("vessel");
        assertThat(problems(log, pour("jug", "30", "H1", "")))
                .containsExactly(new Problem("vessel", "jug was emptied into beaker."));
    }

    @Test
    void expiredQuarantinedAndWrongLotsStop() {
        assertThat(problems(LogWriter.toner(), pour("beaker", "30", "H2", "")))
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains("expired on 2026-02-01"));
        assertThat(fields(LogWriter.toner(), pour("beaker", "30", "H3", ""))).containsExactly("lot");
        assertThat(fields(LogWriter.toner(), pour("beaker", "30", "H2", "smells right")))
                .isEmpty();
        assertThat(fields(LogWriter.toner(), pour("beaker", "30", "S1", "never")))
                .containsExactly("lot");
        assertThat(fields(LogWriter.toner(), pour("beaker", "30", "X9", ""))).containsExactly("lot");
    }

    @Test
    void moreOutThanIn() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "30");
        assertThat(fields(log, new BatchEvent.Sampled("beaker", g("30.1"), "pH")))
                .containsExactly("mass");
        assertThat(fields(log, fill("30.1", ""))).containsExactly("total");
        assertThat(fields(log, fill("30.1", "two balances"))).isEmpty();
        assertThat(fields(log, fill("30", ""))).isEmpty();
    }

    @Test
    void readingsThatAreNone() {
        assertThat(fields(LogWriter.toner(), ph(Double.NaN))).containsExactly("value");
        assertThat(fields(LogWriter.toner(), ph(14.2))).containsExactly("value");
        assertThat(fields(LogWriter.toner(), ph(5.2))).isEmpty();
    }

    @Test
    void strikingWhatIsNotThereOrStruck() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "30");
        assertThat(fields(log, new BatchEvent.Struck(9, "no"))).containsExactly("entry");
        log.add(new BatchEvent.Struck(3, "read wrongly"));
        assertThat(fields(log, new BatchEvent.Struck(3, "again"))).containsExactly("entry");
        assertThat(fields(log, new BatchEvent.Struck(4, ""))).containsExactly("reason");
    }

    @Test
    void afterTheDecisionNothingIsPoured() {
        LogWriter log =
                LogWriter.toner().add(new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "A. Maker", "", List.of()));
        assertThat(fields(log, pour("beaker", "30", "H1", ""))).containsExactly("batch");
        assertThat(fields(log, new BatchEvent.Noted("one came back leaking"))).isEmpty();
    }

    @Test
    void everyGateIsMetOrOverruledByName() {
        Brief plain = Brief.of(ProductType.TONER);
        Brief brief = new Brief(
                plain.type(),
                plain.people(),
                "",
                "",
                Optional.of(new Interval(5, 5.5)),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "EU");
        LogWriter log = LogWriter.toner()
                .everyLineAsPlanned("beaker")
                .step("beaker", "a1", 20)
                .step("beaker", "b1", 20)
                .ph(5.7)
                .add(new BatchEvent.Filled("beaker", "bottle", 9, g("950"), Optional.empty(), ""));
        List<ReleaseGate> gates = gates(log, brief);
        assertThat(gates)
                .filteredOn(gate -> !gate.met())
                .extracting(ReleaseGate::name)
                .containsExactly("ph");
        assertThat(ReleaseGate.problems(gates, release(List.of()))).hasSize(1);
        assertThat(ReleaseGate.problems(gates, release(List.of("ph: ")))).hasSize(1);
        assertThat(ReleaseGate.problems(gates, release(List.of(ReleaseGate.overruling("ph", "band too narrow")))))
                .isEmpty();
        log.ph(5.3);
        assertThat(gates(log, brief)).allMatch(ReleaseGate::met);
    }

    @Test
    void anUnexplainedDeviationHoldsTheRelease() {
        LogWriter log = LogWriter.toner().everyLineAsPlanned("beaker").pour("beaker", "p", "preservative-1", "3");
        Brief brief = Brief.of(ProductType.TONER);
        assertThat(gate(gates(log, brief), "deviations").met()).isFalse();
        log.add(new BatchEvent.LineAccepted("p", "assessed, below the limit"));
        assertThat(gate(gates(log, brief), "deviations").met()).isTrue();
    }

    private static ReleaseGate gate(List<ReleaseGate> gates, String name) {
        return gates.stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
    }

    private static List<ReleaseGate> gates(LogWriter log, Brief brief) {
        AsMade made = AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK);
        return ReleaseGate.of(log.state(), made, Workbench.toner(), brief, List.of(), List.of());
    }

    private static BatchEvent.Decided release(List<String> overruled) {
        return new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "A. Maker", "", overruled);
    }

    private static BatchEvent fill(String total, String note) {
        return new BatchEvent.Filled("beaker", "bottle", 1, g(total), Optional.empty(), note);
    }

    private static BatchEvent ph(double value) {
        return new BatchEvent.ReadingTaken(ReadingKind.PH, "beaker", Optional.of(value), "", "", Map.of());
    }

    private static BatchEvent pour(String vessel, String mass, String lot, String note) {
        Optional<String> code = lot.isEmpty() ? Optional.empty() : Optional.of(lot);
        Grams grams = g(mass);
        return new BatchEvent.Poured(
                vessel, Optional.of("h"), "humectant-1", code, grams, Purpose.LINE, "bench balance", "", note);
    }

    private static List<String> fields(LogWriter log, BatchEvent event) {
        return problems(log, event).stream().map(Problem::field).toList();
    }

    private static List<Problem> problems(LogWriter log, BatchEvent event) {
        return BatchRules.problems(log.state(), event, FACTS);
    }
}
