package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.plan.Workbench;

class BatchStateTest {
    @Test
    void severalPoursLotsAndVesselsAddUpPerLine() {
        BatchState state = LogWriter.toner()
                .pour("beaker", "h", "humectant-1", "12.5")
                .pour("jug", "h", "humectant-1", "18")
                .pour("beaker", "h", "humectant-1", "-0.5")
                .state();
        assertThat(state.poured("h")).isEqualTo(g("30"));
        assertThat(state.vessel("beaker").orElseThrow().mixture().net()).isEqualTo(g("12"));
        assertThat(state.stage()).isEqualTo(BatchStage.IN_WORK);
    }

    @Test
    void aStruckEntryDoesNotCountAndAStruckStrikingRestores() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "30");
        log.add(new BatchEvent.Struck(3, "read wrongly"));
        assertThat(log.state().poured("h")).isEqualTo(g("0"));
        log.add(new BatchEvent.Struck(4, "was right after all"));
        assertThat(log.state().poured("h")).isEqualTo(g("30"));
        assertThat(log.state().struck()).containsExactly(4);
        log.add(new BatchEvent.Struck(5, "no, wrong"));
        assertThat(log.state().poured("h")).isEqualTo(g("0"));
    }

    @Test
    void whatIsMissingOnWeighingBackEvaporated() {
        BatchState state = LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .add(new BatchEvent.VesselWeighed("beaker", g("1242")))
                .state();
        assertThat(state.vessel("beaker").orElseThrow().mixture().lost()).isEqualTo(g("12"));
        assertThat(state.weighings().get(0).missing()).contains(g("12"));
        assertThat(AsMade.of(state, Workbench.toner(), Workbench.BOOK).waterLostFraction())
                .isEqualTo(12.0 / 954);
    }

    @Test
    void moreThanExpectedOnWeighingBackIsKeptAsAFinding() {
        BatchState state = LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .add(new BatchEvent.VesselWeighed("beaker", g("1260")))
                .state();
        assertThat(state.weighings().get(0).missing()).contains(g("-6"));
        assertThat(state.vessel("beaker").orElseThrow().mixture().net()).isEqualTo(g("954"));
    }

    @Test
    void combiningMovesEverythingAndASampleTakesOfEverything() {
        BatchState state = LogWriter.toner()
                .vessel("jug")
                .pour("beaker", "w", "water", "900")
                .pour("jug", "h", "humectant-1", "100")
                .add(new BatchEvent.Combined("jug", "beaker", Optional.of(40.0), Optional.of(42.0)))
                .add(new BatchEvent.Sampled("beaker", g("50"), "pH"))
                .state();
        Vessel beaker = state.vessel("beaker").orElseThrow();
        assertThat(beaker.mixture().of("water")).isEqualTo(g("855"));
        assertThat(beaker.mixture().of("humectant-1")).isEqualTo(g("95"));
        assertThat(beaker.celsius()).contains(42.0);
        assertThat(state.vessel("jug").orElseThrow().combinedInto()).contains("beaker");
        assertThat(state.drawn().get(0).mixture().net()).isEqualTo(g("50"));
    }

    @Test
    void stagesFollowTheLog() {
        LogWriter log = new LogWriter().add(new BatchEvent.Planned(LogWriter.tonerPlan()));
        assertThat(log.state().stage()).isEqualTo(BatchStage.PLANNED);
        log.vessel("beaker").everyLineAsPlanned("beaker");
        log.add(new BatchEvent.RestBegun(Instant.parse("2026-03-02T09:00:00Z"), "haze"));
        assertThat(log.state().stage()).isEqualTo(BatchStage.RESTING);
        log.add(new BatchEvent.RestEnded("clear"));
        assertThat(log.state().stage()).isEqualTo(BatchStage.IN_WORK);
        log.add(new BatchEvent.Filled("beaker", "bottle", 9, g("900"), Optional.of(g("50")), ""));
        assertThat(log.state().stage()).isEqualTo(BatchStage.FILLED);
        log.add(new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "A. Maker", "", List.of()));
        assertThat(log.state().stage()).isEqualTo(BatchStage.RELEASED);
        Yield yield = Yield.of(log.state());
        assertThat(yield.unaccounted()).isEqualTo(g("50"));
        assertThat(yield.filledPercent().orElseThrow()).isEqualByComparingTo("90");
    }

    @Test
    void timersRunUntilStopped() {
        LogWriter log = LogWriter.toner()
                .add(new BatchEvent.TimerStarted("t1", "beaker", "stir", Instant.parse("2026-03-01T10:00:00Z")));
        assertThat(log.state().timers()).hasSize(1);
        log.add(new BatchEvent.TimerStopped("t1", ""));
        assertThat(log.state().timers()).isEmpty();
    }

    @Test
    void bulkOfAnotherBatchBringsItsContentsAndItsLoss() {
        BatchState state = new LogWriter()
                .vessel("jug")
                .add(new BatchEvent.BulkReceived(
                        "jug",
                        "260301-1",
                        List.of(new BatchEvent.BulkPart("water", Optional.of("W1"), Optional.of("w"), g("400"))),
                        g("4")))
                .pour("jug", "", "fragrance-1", g("2"), Purpose.LINE)
                .state();
        assertThat(state.vessel("jug").orElseThrow().mixture().net()).isEqualTo(g("398"));
        assertThat(state.inputs()).hasSize(2);
    }

    @Test
    void aSecondLookByOneselfCountsAfterAMinuteAndByAnotherAtOnce() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "30");
        assertThat(check(log).kind()).isEqualTo(PourCheck.Kind.NOT_CHECKED);
        log.add(new BatchEvent.ReadAgain(3, g("30")));
        assertThat(check(log)).isEqualTo(new PourCheck(PourCheck.Kind.SELF_CHECKED, "maker"));
        log.add(new BatchEvent.ReadAgain(3, g("30.1")));
        assertThat(check(log).kind()).isEqualTo(PourCheck.Kind.DISAGREES);
    }

    private static PourCheck check(LogWriter log) {
        BatchState state = log.state();
        return state.check(state.pours().get(0));
    }

    @Test
    void aTimerEndsWithItsStepItsVesselAndTheBatch() {
        LogWriter log = LogWriter.toner().vessel("jug");
        timer(log, "t1", "beaker", "done", 600);
        timer(log, "t2", "beaker", "cool down", 600);
        timer(log, "t3", "jug", "melt", 600);
        timer(log, "t4", "beaker", "rest", 1);
        timer(log, "t5", "cupboard", "culture", 600);
        log.step("beaker", "a1", 40);
        assertThat(running(log)).containsExactly("t2", "t3", "t5");
        log.add(new BatchEvent.Combined("jug", "beaker", Optional.empty(), Optional.empty()));
        assertThat(running(log)).containsExactly("t2", "t5");
        log.add(new BatchEvent.Struck(log.log().size() - 1, "another step"));
        assertThat(running(log)).containsExactly("t1", "t2", "t4", "t5");
        log.add(new BatchEvent.Decided(BatchEvent.Decision.REJECTED, "A. Maker", "lumps", List.of()));
        assertThat(running(log)).isEmpty();
    }

    private static void timer(LogWriter log, String timer, String vessel, String label, int minutes) {
        Instant until = Instant.parse("2026-03-01T09:00:00Z").plusSeconds(60L * minutes);
        log.add(new BatchEvent.TimerStarted(timer, vessel, label, until));
    }

    private static List<String> running(LogWriter log) {
        return log.state().timers().stream().map(timer -> timer.event().timer()).toList();
    }
}
