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
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Interval;

/** What the pH as read asks for next. The band is invented. */
class PhNextTest {
    private static final Interval BAND = new Interval(5, 5.5);

    @Test
    void aReadingOutsideTheBandIsToBeCorrectedAndReadAgain() {
        LogWriter log = upToTheAcid().pour("beaker", "c", "acid-1", g("1"), Purpose.CORRECTION_ACID);
        assertThat(first(log))
                .isInstanceOfSatisfying(
                        NextAction.AddToReading.class,
                        add -> assertThat(add.unread()).isTrue());
        log.ph(6.1);
        NextAction.Correct correct = (NextAction.Correct) first(log);
        assertThat(correct.standing().value()).isEqualTo(6.1);
        assertThat(correct.standing().above()).isTrue();
        assertThat(correct.line().orElseThrow().lineId()).isEqualTo("c");
        assertThat(next(log).batch()).isEmpty();

        log.pour("beaker", "", "acid-1", g("0.4"), Purpose.CORRECTION_ACID);
        assertThat(first(log)).isEqualTo(new NextAction.ReadPh("beaker"));
        log.ph(5.2);
        assertThat(next(log).vessels().get("beaker")).isEmpty();
    }

    @Test
    void onceTheAcidIsBegunItsReadingGoesBeforeTheOpenStep() {
        LogWriter log = LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .pour("beaker", "h", "humectant-1", "30")
                .pour("beaker", "s", "salt-1", "5")
                .step("beaker", "a1", 21)
                .pour("beaker", "p", "preservative-1", "9");
        assertThat(first(log)).isInstanceOf(NextAction.DoStep.class);
        log.pour("beaker", "c", "acid-1", g("1"), Purpose.CORRECTION_ACID);
        assertThat(first(log)).isInstanceOf(NextAction.AddToReading.class);
        log.ph(6.1);
        assertThat(first(log)).isInstanceOf(NextAction.Correct.class);
        log.ph(5.2);
        assertThat(first(log)).isInstanceOf(NextAction.DoStep.class);
    }

    @Test
    void insideTheBandItRestsOnceBeforeItIsFilled() {
        LogWriter log = upToTheAcid()
                .pour("beaker", "c", "acid-1", g("1.4"), Purpose.CORRECTION_ACID)
                .ph(5.2);
        NextAction.Fill fill = new NextAction.Fill("beaker", g("999.4"));
        assertThat(next(log).batch()).containsExactly(new NextAction.LetRest("beaker"), fill);
        log.add(new BatchEvent.RestBegun(Instant.parse("2026-03-02T09:00:00Z"), ""))
                .add(new BatchEvent.RestEnded("clear"));
        assertThat(next(log).batch()).containsExactly(fill);
        log.ph(4.8);
        assertThat(first(log))
                .isInstanceOfSatisfying(
                        NextAction.Correct.class,
                        correct -> assertThat(correct.standing().above()).isFalse());
    }

    @Test
    void theMakerMayAcceptThePhAsItIs() {
        LogWriter log = upToTheAcid()
                .pour("beaker", "c", "acid-1", g("1"), Purpose.CORRECTION_ACID)
                .ph(5.6)
                .add(new BatchEvent.LineAccepted("c", "close enough for a trial"));
        assertThat(next(log).vessels().get("beaker")).isEmpty();
        assertThat(next(log).batch()).hasSize(1).allMatch(NextAction.Fill.class::isInstance);
    }

    @Test
    void aReadingFromBeforeThePlannedPoursSaysNothing() {
        LogWriter log = LogWriter.toner().pour("beaker", "w", "water", "954").ph(7.0);
        assertThat(first(log)).isInstanceOf(NextAction.Weigh.class);
        LogWriter later = upToTheAcid();
        assertThat(first(later)).isInstanceOf(NextAction.AddToReading.class);
    }

    @Test
    void withoutALineForItTheBandStillAsks() {
        LogWriter log = upToTheAcid();
        assertThat(plain(log).vessels().get("beaker")).isEmpty();
        log.ph(6.3);
        assertThat(plain(log).next("beaker"))
                .get()
                .isInstanceOfSatisfying(
                        NextAction.Correct.class,
                        correct -> assertThat(correct.line()).isEmpty());
        NextActions freeHand = NextActions.freeHand(log.state(), Optional.of(BAND));
        assertThat(freeHand.next("beaker")).get().isInstanceOf(NextAction.Correct.class);
        assertThat(freeHand.batch()).isEmpty();
    }

    @Test
    void whatWasFilledIsNotCorrectedAndWhatWasDecidedIsLeft() {
        LogWriter log = upToTheAcid()
                .pour("beaker", "c", "acid-1", g("1.4"), Purpose.CORRECTION_ACID)
                .ph(5.2)
                .add(new BatchEvent.Filled("beaker", "bottle", 9, g("900"), Optional.empty(), ""))
                .ph(5.9);
        assertThat(next(log).vessels().get("beaker")).isEmpty();
        log.add(new BatchEvent.Decided(BatchEvent.Decision.REJECTED, "A. Maker", "drifts", List.of()));
        assertThat(next(log).vessels()).isEmpty();
        assertThat(next(log).batch()).isEmpty();
    }

    private static LogWriter upToTheAcid() {
        return LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .pour("beaker", "h", "humectant-1", "30")
                .pour("beaker", "s", "salt-1", "5")
                .step("beaker", "a1", 21)
                .pour("beaker", "p", "preservative-1", "9")
                .step("beaker", "b1", 21);
    }

    /** The toner without its acid. */
    private static NextActions plain(LogWriter log) {
        List<Phase> phases = Workbench.toner().phases().stream()
                .map(phase -> new Phase(
                        phase.id(),
                        phase.name(),
                        phase.lines().stream()
                                .filter(line -> !line.id().equals("c"))
                                .toList(),
                        phase.steps()))
                .toList();
        Plan plan = LogWriter.tonerPlan();
        Plan without = new Plan(
                plan.batch(),
                plan.reckoning(),
                plan.lines().stream().filter(line -> !line.lineId().equals("c")).toList(),
                plan.shortages(),
                plan.residue());
        return NextActions.of(new Formula(phases), without, log.state(), Optional.of(BAND));
    }

    private static NextAction first(LogWriter log) {
        return next(log).next("beaker").orElseThrow();
    }

    private static NextActions next(LogWriter log) {
        return NextActions.of(Workbench.toner(), LogWriter.tonerPlan(), log.state(), Optional.of(BAND));
    }
}
