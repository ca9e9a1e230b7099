package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;

/** Rules that hold for every log, tried on seeded random ones. */
class BatchIdentityTest {
    private static final List<String> VESSELS = List.of("pot", "jug", "beaker");
    private static final String[] MATERIALS = {"water", "humectant-1", "oil-1", "acid-1", "active-1"};

    @Test
    void massIsConservedOverPoursSamplesEvaporationAndCombines() {
        Random random = new Random(1789);
        int lossy = 0;
        for (int run = 0; run < 300; run++) {
            LogWriter log = randomLog(random);
            BatchState state = log.state();
            Mixture everywhere = state.everywhere();
            Grams added = Grams.sum(state.inputs().stream().map(Content::mass).toList());
            assertThat(everywhere.asAdded().doubleValue()).isCloseTo(added.doubleValue(), relative(added));
            for (String material : MATERIALS) {
                Grams came = new Mixture(state.inputs(), Grams.ZERO).of(material);
                assertThat(everywhere.of(material).doubleValue()).isCloseTo(came.doubleValue(), relative(added));
            }
            lossy += everywhere.lost().signum();
            asAddedSumsAreExact(state, log);
        }
        assertThat(lossy).isGreaterThan(100);
    }

    @Test
    void foldingTwiceGivesTheSameState() {
        Random random = new Random(1848);
        for (int run = 0; run < 200; run++) {
            List<LogEntry> log = randomLog(random).log();
            assertThat(BatchState.of(log)).isEqualTo(BatchState.of(log));
        }
    }

    @Test
    void aStruckEntryLeavesTheStateAsIfItHadNeverBeen() {
        Random random = new Random(1871);
        for (int run = 0; run < 100; run++) {
            LogWriter log = randomLog(random);
            BatchState before = log.state();
            BatchState after = log.pour("pot", "", "oil-1", "7.77")
                    .add(new BatchEvent.Struck(before.lastEntry() + 1, "spilt beside"))
                    .state();
            assertThat(after.vessels()).isEqualTo(before.vessels());
            assertThat(after.inputs()).isEqualTo(before.inputs());
        }
    }

    @Test
    void carriedFormulasAddUpToExactlyOneHundred() {
        Random random = new Random(1918);
        int carriedLogs = 0;
        for (int run = 0; run < 300; run++) {
            LogWriter log = randomLog(random);
            AsMade made = AsMade.of(log.state(), Formula.EMPTY, Workbench.BOOK);
            Formula carried =
                    new CarriedFormula(made, Formula.EMPTY, log.state(), Workbench.BOOK).at(random.nextInt(5));
            BigDecimal sum = BigDecimal.ZERO;
            boolean toHundred = false;
            for (Line line : carried.lines()) {
                toHundred |= line.amount() instanceof Amount.ToHundred;
                sum = sum.add(line.amount()
                        .match(
                                f -> f.percent().value(),
                                () -> BigDecimal.ZERO,
                                r -> r.expected().value()));
            }
            if (toHundred) {
                assertThat(sum).isLessThan(BigDecimal.valueOf(100));
            } else if (!carried.lines().isEmpty()) {
                carriedLogs++;
                assertThat(sum).isEqualByComparingTo("100");
            }
        }
        assertThat(carriedLogs).isGreaterThan(5);
    }

    @Test
    void aPerfectlyWorkedPlanIsThePlanForEveryFormula() {
        Random random = new Random(1968);
        Bench bench = new Bench(List.of(Workbench.KITCHEN, Workbench.FINE), List.of(), Tolerances.USUAL);
        for (int run = 0; run < 200; run++) {
            Formula formula = Workbench.random(random);
            BatchSize size = new BatchSize.Stated(new Grams(BigDecimal.valueOf(2000 + random.nextInt(200_000), 1)));
            Plan plan = new Planner(Workbench.BOOK, bench, Workbench.TODAY).plan(formula, size, Map.of());
            LogWriter log = new LogWriter().add(new BatchEvent.Planned(plan)).vessel("pot");
            plan.lines().stream()
                    .filter(line -> !line.target().isZero())
                    .forEach(line -> log.pour("pot", line.lineId(), line.materialKey(), line.target(), Purpose.LINE));
            AsMade made = AsMade.of(log.state(), formula, Workbench.BOOK);
            assertThat(made.product()).isEqualTo(plan.batch());
            assertThat(made.deviations()).isEmpty();
            assertThat(made.lines().stream().map(MadeLine::lineId).toList())
                    .isEqualTo(plan.lines().stream().map(PlannedLine::lineId).toList());
            plan.lines().forEach(line -> {
                MadeLine one = made.line(line.lineId()).orElseThrow();
                assertThat(one.actual()).isEqualTo(line.target());
                assertThat(one.made()).isEqualTo(line.planned(plan.batch()));
            });
        }
    }

    /** Grams are stored: what was put in adds up to the last digit, whatever was drawn later. */
    private static void asAddedSumsAreExact(BatchState state, LogWriter log) {
        Grams poured = Grams.sum(log.log().stream()
                .map(LogEntry::event)
                .filter(BatchEvent.Poured.class::isInstance)
                .map(event -> ((BatchEvent.Poured) event).mass())
                .toList());
        AsMade made = AsMade.of(state, Formula.EMPTY, Workbench.BOOK);
        assertThat(made.added()).isEqualTo(poured);
        assertThat(Grams.sum(made.lines().stream().map(MadeLine::actual).toList()))
                .isEqualTo(poured);
        assertThat(Grams.sum(made.lots().stream().map(MadeLot::added).toList())).isEqualTo(poured);
    }

    private static LogWriter randomLog(Random random) {
        LogWriter log = new LogWriter();
        VESSELS.forEach(log::vessel);
        int entries = 1 + random.nextInt(40);
        for (int i = 0; i < entries; i++) {
            String vessel = VESSELS.get(random.nextInt(VESSELS.size()));
            Vessel now = log.state().vessel(vessel).orElseThrow();
            if (now.open()) {
                event(random, log, now);
            }
        }
        return log;
    }

    private static void event(Random random, LogWriter log, Vessel vessel) {
        Grams held = new Grams(vessel.mixture().net().value().setScale(2, RoundingMode.FLOOR));
        String other = VESSELS.get(random.nextInt(VESSELS.size()));
        switch (random.nextInt(8)) {
            case 0 -> log.add(new BatchEvent.Sampled(vessel.name(), part(random, held, 3), "pH"));
            case 1 ->
                log.add(new BatchEvent.VesselWeighed(
                        vessel.name(), g("300").plus(held).minus(part(random, held, 20))));
            case 2 -> {
                if (log.state().vessel(other).orElseThrow().open() && random.nextInt(3) == 0) {
                    log.add(new BatchEvent.Combined(vessel.name(), other, Optional.empty(), Optional.empty()));
                }
            }
            case 3 ->
                log.add(new BatchEvent.Filled(
                        vessel.name(), "jar", 1, part(random, held, 4), Optional.of(part(random, held, 40)), ""));
            default ->
                log.pour(
                        vessel.name(),
                        "",
                        MATERIALS[random.nextInt(MATERIALS.length)],
                        new Grams(BigDecimal.valueOf(1 + random.nextInt(20_000), 2)),
                        Purpose.LINE);
        }
    }

    private static Grams part(Random random, Grams held, int least) {
        BigDecimal share = held.value().multiply(BigDecimal.valueOf(random.nextDouble() / least));
        return new Grams(share.setScale(2, RoundingMode.FLOOR));
    }

    private static Offset<Double> relative(Grams whole) {
        return offset(1e-9 * Math.max(1, whole.doubleValue()));
    }
}
