package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;

class OverPourTest {
    private static final List<Balance> BALANCES = List.of(Workbench.KITCHEN, Workbench.FINE);

    @Test
    void onTopItIsTakenBack() {
        LogWriter log = LogWriter.toner().pour("beaker", "w", "water", "954").pour("beaker", "h", "humectant-1", "33");
        assertThat(ways(log, "h")).contains(new Mend.TakeBack(g("3")));
        assertThat(ways(log, "h")).noneMatch(Mend.Leave.class::isInstance);
    }

    @Test
    void aLittleOfSomethingUnlimitedIsLeft() {
        LogWriter log =
                LogWriter.toner().pour("beaker", "s", "salt-1", "5.1").pour("beaker", "p", "preservative-1", "9.18");
        assertThat(ways(log, "s").get(0)).isInstanceOf(Mend.Leave.class);
        assertThat(ways(log, "p")).noneMatch(Mend.Leave.class::isInstance);
    }

    @Test
    void farOverTheFigureIsDoubtedFirst() {
        LogWriter log =
                LogWriter.toner().pour("beaker", "h", "humectant-1", "2").pour("beaker", "h", "humectant-1", "300");
        assertThat(ways(log, "h").get(0)).isEqualTo(new Mend.Strike(4, g("300")));
        LogWriter little = LogWriter.toner().pour("beaker", "h", "humectant-1", "44");
        assertThat(ways(little, "h")).noneMatch(Mend.Strike.class::isInstance);
    }

    @Test
    void inItsPhaseThePartnersAreScaled() {
        LogWriter log = LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .pour("beaker", "h", "humectant-1", "33")
                .step("beaker", "a1", 20);
        List<Mend> ways = ways(log, "h");
        assertThat(ways).noneMatch(Mend.TakeBack.class::isInstance);
        Mend.ScalePhase scaled = one(ways, Mend.ScalePhase.class);
        assertThat(scaled.factor()).isEqualByComparingTo("1.1");
        assertThat(scaled.additions())
                .containsExactly(new Addition("w", "water", g("95.4")), new Addition("s", "salt-1", g("5.5")));
        assertThat(scaled.use()).isEqualTo(g("989"));
        assertThat(scaled.discard()).isEqualTo(g("98.9"));
    }

    @Test
    void onceCombinedOnlyMoreOrAcceptRemain() {
        LogWriter log = LogWriter.toner()
                .vessel("jug")
                .pour("jug", "h", "humectant-1", "33")
                .add(new BatchEvent.Combined("jug", "beaker", Optional.empty(), Optional.empty()));
        assertThat(ways(log, "h"))
                .extracting(way -> (Object) way.getClass())
                .containsExactly(Mend.LargerBatch.class, Mend.SecondBatch.class, Mend.Accept.class, Mend.Discard.class);
    }

    /** By hand: 33 g within +5 % of 3 % need 33 / 0.0315 = 1047.6 g; tolerances rounded to steps give 1.5 of 30 g. */
    @Test
    void theLeastLargerBatchByHand() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-1", "33");
        Mend.LargerBatch larger = one(ways(log, "h"), Mend.LargerBatch.class);
        assertThat(larger.batch().doubleValue()).isCloseTo(1047.6, offset(0.6));
        assertThat(larger.additions()).noneMatch(addition -> addition.lineId().equals("h"));
        assertThat(larger.against()).isEmpty();
    }

    @Test
    void everyLargerBatchEndsInToleranceAndIsTheLeastUpToTheSteps() {
        Random random = new Random(1989);
        int larger = 0;
        for (int run = 0; run < 200; run++) {
            Formula formula = Workbench.random(random);
            Plan plan = new Planner(Workbench.BOOK, new Bench(BALANCES, List.of(), Tolerances.USUAL), Workbench.TODAY)
                    .plan(formula, new BatchSize.Stated(g("800")), Map.of());
            PlannedLine victim = plan.lines().get(random.nextInt(plan.lines().size()));
            if (victim.target().compareTo(g("2")) < 0) {
                continue;
            }
            Grams poured = new Grams(victim.target().value().multiply(new BigDecimal("1.2")));
            BatchState state = new LogWriter()
                    .add(new BatchEvent.Planned(plan))
                    .vessel("pot")
                    .pour("pot", victim.lineId(), victim.materialKey(), poured, Purpose.LINE)
                    .state();
            Mend.LargerBatch mend = one(
                    new OverPour(plan, formula, state, BALANCES, List.of(), Set.of()).ways(victim.lineId()),
                    Mend.LargerBatch.class);
            larger++;
            endsInTolerance(plan, mend, victim, poured);
        }
        assertThat(larger).isGreaterThan(100);
    }

    private static void endsInTolerance(Plan plan, Mend.LargerBatch mend, PlannedLine victim, Grams poured) {
        double factor = mend.batch().doubleValue() / plan.batch().doubleValue();
        for (PlannedLine line : plan.lines()) {
            Grams added = mend.additions().stream()
                    .filter(addition -> addition.lineId().equals(line.lineId()))
                    .map(Addition::mass)
                    .findFirst()
                    .orElse(Grams.ZERO);
            Grams end = line.lineId().equals(victim.lineId()) ? poured.plus(added) : added;
            double wanted = line.target().doubleValue() * factor;
            double most = Math.min(
                    0.5,
                    line.tolerance().doubleValue()
                            / Math.max(1e-9, line.target().doubleValue()));
            assertThat(Math.abs(end.doubleValue() - wanted)).isLessThanOrEqualTo(most * wanted + 1e-6);
        }
        double tolerance = victim.tolerance().doubleValue() / victim.target().doubleValue();
        double least = plan.batch().doubleValue() * 1.2 / (1 + tolerance);
        assertThat(mend.batch().doubleValue()).isGreaterThanOrEqualTo(least - 1);
    }

    private static <T extends Mend> T one(List<Mend> ways, Class<T> kind) {
        return ways.stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Mend> ways(LogWriter log, String line) {
        return new OverPour(LogWriter.tonerPlan(), Workbench.toner(), log.state(), BALANCES, List.of(), Set.of("p"))
                .ways(line);
    }
}
