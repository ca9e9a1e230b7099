package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Rules that hold for every plan, tried on seeded random formulas, balances and batch sizes. */
class PlanIdentityTest {
    private static final String[] STEPS = {"1", "0.1", "0.01", "0.001"};

    @Test
    void roundedPlanAddsUpAndKeepsHalfStepAndLimits() {
        Random random = new Random(1776);
        int limited = 0;
        int residues = 0;
        for (int run = 0; run < 2000; run++) {
            Formula formula = Workbench.random(random);
            Map<String, PercentRange> allowed = allowed(random, formula);
            List<Balance> balances = balances(random);
            BatchSize size = size(random);
            Bench bench = new Bench(balances, List.of(), Tolerances.USUAL);
            Plan plan = new Planner(Workbench.BOOK, bench, Workbench.TODAY).plan(formula, size, allowed);
            assertThat(Grams.sum(plan.lines().stream().map(PlannedLine::target).toList()))
                    .isEqualTo(plan.batch());
            if (plan.residue().isPresent()) {
                residues++;
                limited += checkLines(plan, balances, allowed);
            }
        }
        assertThat(residues).isGreaterThan(1500);
        assertThat(limited).isGreaterThan(500);
    }

    private static int checkLines(Plan plan, List<Balance> balances, Map<String, PercentRange> allowed) {
        int limited = 0;
        for (PlannedLine line : plan.lines()) {
            Optional<PercentRange> range = Optional.ofNullable(allowed.get(line.lineId()));
            boolean refused = line.advice().stream().anyMatch(a -> a.says().startsWith("No step"));
            if (range.isPresent() && !refused) {
                limited++;
                assertThat(line.target())
                        .isBetween(
                                range.get().low().of(plan.batch()),
                                range.get().high().of(plan.batch()));
            }
            if (plan.residue().filter(line.lineId()::equals).isEmpty()) {
                BigDecimal step = step(balances, line.balance());
                BigDecimal off =
                        line.target().minus(line.asked().of(plan.batch())).abs().value();
                BigDecimal most = range.isPresent() ? step : step.divide(BigDecimal.valueOf(2));
                assertThat(off).isLessThanOrEqualTo(most);
                assertThat(line.target().value().remainder(step)).isEqualByComparingTo("0");
            }
        }
        return limited;
    }

    /** Random limits around what is asked, at times exactly at it. */
    private static Map<String, PercentRange> allowed(Random random, Formula formula) {
        Map<String, PercentRange> allowed = new HashMap<>();
        for (Line line : formula.lines()) {
            if (random.nextInt(4) == 0 && line.amount() instanceof Amount.Fixed fixed) {
                BigDecimal percent = fixed.percent().value();
                BigDecimal high = random.nextBoolean() ? percent : percent.multiply(new BigDecimal("1.01"));
                BigDecimal low = random.nextBoolean() ? BigDecimal.ZERO : percent.multiply(new BigDecimal("0.99"));
                allowed.put(
                        line.id(), new PercentRange(new Percent(low), new Percent(high.min(BigDecimal.valueOf(100)))));
            }
        }
        return allowed;
    }

    private static List<Balance> balances(Random random) {
        int coarse = random.nextInt(3);
        return List.of(
                new Balance("coarse", g(STEPS[coarse]), Optional.empty(), g("6000")),
                new Balance("fine", g(STEPS[coarse + 1]), Optional.empty(), g("200")));
    }

    private static BatchSize size(Random random) {
        if (random.nextBoolean()) {
            return new BatchSize.Stated(new Grams(BigDecimal.valueOf(500 + random.nextInt(500_000), 2)));
        }
        Grams fill = new Grams(BigDecimal.valueOf(100 + random.nextInt(20_000), 2));
        return new BatchSize.FromContainers(1 + random.nextInt(50), fill, g("20"), Percent.of("7.5"));
    }

    private static BigDecimal step(List<Balance> balances, String name) {
        return balances.stream()
                .filter(b -> b.name().equals(name))
                .findFirst()
                .orElseThrow()
                .step()
                .value();
    }
}
