package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.plan.Workbench;

class NextActionsTest {
    @Test
    void withoutAVesselTheFirstPhaseAsksForOne() {
        NextActions next = next(new LogWriter().add(new BatchEvent.Planned(LogWriter.tonerPlan())));
        assertThat(next.batch()).containsExactly(new NextAction.ReadyVessel("a", "water"));
    }

    @Test
    void linesThenStepsThenWhatIsAddedToAReading() {
        LogWriter log = LogWriter.toner().pour("beaker", "w", "water", "500");
        NextAction.Weigh first = (NextAction.Weigh) first(log);
        assertThat(first.line().lineId()).isEqualTo("w");
        assertThat(first.open()).isEqualTo(g("454"));
        log.pour("beaker", "w", "water", "454")
                .pour("beaker", "h", "humectant-1", "30")
                .pour("beaker", "s", "salt-1", "5");
        assertThat(first(log)).isEqualTo(new NextAction.DoStep("a", Workbench.step("a1", "Stir until clear.")));
        log.step("beaker", "a1", 21).pour("beaker", "p", "preservative-1", "9").step("beaker", "b1", 21);
        assertThat(first(log)).isInstanceOf(NextAction.AddToReading.class);
        log.pour("beaker", "c", "acid-1", g("1.4"), Purpose.CORRECTION_ACID);
        assertThat(first(log)).isInstanceOf(NextAction.AddToReading.class);
        log.ph(5.2);
        assertThat(next(log).vessels().get("beaker")).isEmpty();
        assertThat(next(log).batch()).containsExactly(new NextAction.Fill("beaker", g("999.4")));
    }

    @Test
    void anOverPourIsToBeSettledOrAccepted() {
        LogWriter log = LogWriter.toner().pour("beaker", "w", "water", "954").pour("beaker", "h", "humectant-1", "33");
        assertThat(first(log))
                .isInstanceOfSatisfying(
                        NextAction.SettleOver.class,
                        over -> assertThat(over.over()).isEqualTo(g("3")));
        log.add(new BatchEvent.LineAccepted("h", "10 % more humectant is harmless"));
        assertThat(first(log))
                .isInstanceOfSatisfying(
                        NextAction.Weigh.class,
                        weigh -> assertThat(weigh.line().lineId()).isEqualTo("s"));
    }

    @Test
    void eachVesselHasItsOwnNextAndTheMainOneWaits() {
        LogWriter log = twoVessels();
        assertThat(next(log).next("pot")).isPresent().get().isInstanceOf(NextAction.Weigh.class);
        assertThat(next(log).next("jug")).isPresent().get().isInstanceOf(NextAction.Weigh.class);
        log.pour("pot", "w", "water", "954")
                .pour("pot", "h", "humectant-1", "30")
                .pour("pot", "s", "salt-1", "5")
                .step("pot", "a1", 72);
        assertThat(next(log, hot()).next("pot")).contains(new NextAction.WaitFor("jug"));
    }

    @Test
    void combiningIsAdvisedWhenBothAreHotAndClose() {
        LogWriter log = twoVessels()
                .pour("pot", "w", "water", "954")
                .pour("pot", "h", "humectant-1", "30")
                .pour("pot", "s", "salt-1", "5")
                .step("pot", "a1", 60)
                .pour("jug", "p", "preservative-1", "9")
                .pour("jug", "c", "acid-1", "2")
                .step("jug", "b1", 71)
                .ph(5.1);
        NextAction.Combine early =
                (NextAction.Combine) next(log, hot()).next("pot").orElseThrow();
        assertThat(early.advised()).isFalse();
        assertThat(early.why()).contains("60 °C");
        log.step("pot", "a1", 69);
        NextAction.Combine now =
                (NextAction.Combine) next(log, hot()).next("pot").orElseThrow();
        assertThat(now.advised()).isTrue();
        assertThat(now.why()).isEqualTo("jug was last seen at 71 °C, pot was last seen at 69 °C; asked 70 °C.");
    }

    @Test
    void whatIsDoneAndWaitedForGoesIntoTheOther() {
        LogWriter log = twoVessels()
                .pour("jug", "p", "preservative-1", "9")
                .pour("jug", "c", "acid-1", "2")
                .step("jug", "b1", 71)
                .ph(5.1);
        assertThat(next(log, hot()).next("jug")).contains(new NextAction.WaitFor("pot"));
        log.pour("pot", "w", "water", "954")
                .pour("pot", "h", "humectant-1", "30")
                .pour("pot", "s", "salt-1", "5")
                .step("pot", "a1", 60)
                .ph(5.1);
        assertThat(next(log, hot()).next("jug"))
                .isPresent()
                .isEqualTo(next(log, hot()).next("pot"))
                .get()
                .isInstanceOf(NextAction.Combine.class);
    }

    @Test
    void aRestingBatchIsLookedAtAgain() {
        Instant due = Instant.parse("2026-03-02T09:00:00Z");
        LogWriter log = LogWriter.toner().everyLineAsPlanned("beaker").add(new BatchEvent.RestBegun(due, "haze"));
        assertThat(next(log).batch()).containsExactly(new NextAction.LookAgain(due, "haze"));
    }

    private static LogWriter twoVessels() {
        return new LogWriter()
                .add(new BatchEvent.Planned(LogWriter.tonerPlan()))
                .vessel("pot", "a")
                .vessel("jug", "b");
    }

    /** The toner with a heated second phase. */
    private static Formula hot() {
        Formula cold = Workbench.toner();
        Phase b = cold.phases().get(1);
        Step melt = new Step("b1", "Melt.", Optional.of(70.0), "", Optional.empty(), "", "hot");
        return new Formula(List.of(cold.phases().get(0), new Phase(b.id(), b.name(), b.lines(), List.of(melt))));
    }

    private static NextAction first(LogWriter log) {
        return next(log).next("beaker").orElseThrow();
    }

    private static NextActions next(LogWriter log) {
        return next(log, Workbench.toner());
    }

    private static NextActions next(LogWriter log, Formula formula) {
        return NextActions.of(formula, LogWriter.tonerPlan(), log.state(), Optional.empty());
    }
}
