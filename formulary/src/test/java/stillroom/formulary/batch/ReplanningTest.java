package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.LotPart;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;

/** What the log says after a way out of an over-pour was taken, and after lots were named anew. */
class ReplanningTest {
    private static OverPour overPour(LogWriter log) {
        return new OverPour(
                log.state().plan().orElseThrow(),
                Workbench.toner(),
                log.state(),
                List.of(Workbench.KITCHEN, Workbench.FINE),
                List.of(),
                Set.of("p"));
    }

    private static <T extends Mend> T way(LogWriter log, String line, Class<T> kind) {
        return overPour(log).ways(line).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theTargetsFollowTheLargerBatchAndNothingIsOverAnyMore() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "33");
        Mend.LargerBatch larger = way(log, "h", Mend.LargerBatch.class);
        log.add(new Replanning(log.state().plan().orElseThrow(), log.state()).larger(larger, "over"));

        Plan plan = log.state().plan().orElseThrow();
        assertThat(plan.batch()).isEqualTo(larger.batch());
        assertThat(Grams.sum(plan.lines().stream().map(PlannedLine::target).toList()))
                .isEqualTo(larger.batch());
        assertThat(plan.line("h").orElseThrow().target()).isEqualTo(g("33"));
        assertThat(overPour(log).ways("h")).isEmpty();
        larger.additions()
                .forEach(addition -> assertThat(
                                plan.line(addition.lineId()).orElseThrow().target())
                        .isEqualTo(addition.mass()));
    }

    @Test
    void theSurplusOfAScaledPhaseIsThrownAwayBeforeAllIsDone() {
        LogWriter log = LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .pour("beaker", "h", "humectant-1", "33")
                .step("beaker", "a1", 20);
        Mend.ScalePhase scale = way(log, "h", Mend.ScalePhase.class);
        log.add(new Replanning(log.state().plan().orElseThrow(), log.state()).scaled(scale, "a", "over"));
        for (Addition addition : scale.additions()) {
            log.pour("beaker", addition.lineId(), addition.materialKey(), addition.mass(), Purpose.LINE);
        }

        NextActions next =
                NextActions.of(Workbench.toner(), log.state().plan().orElseThrow(), log.state(), Optional.empty());
        assertThat(next.next("beaker")).contains(new NextAction.TakeOut("a", "water", scale.discard()));
        log.add(new BatchEvent.Sampled(
                "beaker", scale.discard(), log.state().surplusOpen().get(0).what()));
        assertThat(log.state().surplusOpen()).isEmpty();
        // Shares of a mixture have 34 digits.
        assertThat(log.state().inVessels().net().doubleValue())
                .isCloseTo(scale.use().doubleValue(), org.assertj.core.api.Assertions.offset(1e-9));
        AsMade made = AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK);
        // 33 of 1087.9 g, as 30 of 989 g: the phase keeps its make.
        assertThat(made.line("h").orElseThrow().made().value().doubleValue())
                .isCloseTo(100 * 33 / 1087.9, org.assertj.core.api.Assertions.offset(1e-6));
    }

    @Test
    void lotsSaidAfterwardsAreTheLotsOfTheWeighing() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "30");
        log.add(new BatchEvent.LotsNamed(
                3, List.of(new LotPart("A", g("12")), new LotPart("B", g("18"))), "A ran out"));

        assertThat(AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK).lots())
                .extracting(lot -> lot.lot().orElse(""), MadeLot::added)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("A", g("12")),
                        org.assertj.core.groups.Tuple.tuple("B", g("18")));
        assertThat(log.state().poured("h")).isEqualTo(g("30"));
        assertThat(log.state().unbooked()).containsExactly(3);

        log.add(new BatchEvent.LotsNamed(3, List.of(new LotPart("B", g("30"))), "it was B alone"));
        assertThat(AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK).lots())
                .extracting(lot -> lot.lot().orElse(""))
                .containsExactly("B");
        assertThat(log.state().unbooked()).containsExactlyInAnyOrder(3, 4);

        log.add(new BatchEvent.Struck(5, "no"));
        assertThat(AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK).lots())
                .hasSize(2);
    }

    @Test
    void whatWentInByMistakeLeavesTheLineOpen() {
        LogWriter log = LogWriter.toner().pour("beaker", "", "salt-1", g("30"), Purpose.MISTAKE);

        assertThat(log.state().poured("s")).isEqualTo(Grams.ZERO);
        MadeLine stray = AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK).lines().stream()
                .filter(line -> line.target().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(stray.materialKey()).isEqualTo("salt-1");
        assertThat(stray.toReading()).isFalse();
    }

    @Test
    void aVesselForOnePhaseDoesNotSilentlyServeTheNext() {
        LogWriter log = new LogWriter().add(new BatchEvent.Planned(LogWriter.tonerPlan()));
        log.vessel("beaker", "a");
        NextActions next = NextActions.of(Workbench.toner(), LogWriter.tonerPlan(), log.state(), Optional.empty());
        assertThat(next.batch()).contains(new NextAction.ReadyVessel("b", "cool"));

        log.add(new BatchEvent.PhasesGiven("beaker", List.of("b")));
        next = NextActions.of(Workbench.toner(), LogWriter.tonerPlan(), log.state(), Optional.empty());
        assertThat(next.batch()).isEmpty();
        assertThat(log.state().vessel("beaker").orElseThrow().phases()).containsExactly("a", "b");
    }
}
