package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;

/** The least larger batch on real balances against the linear program of a general-purpose library (ojAlgo). */
class OverPourEngineTest {
    private static final int MOST = 1000;

    @Test
    void noLargerBatchIsSmallerThanTheProgramAllowsAndNoneIsMuchLarger() {
        Random random = new Random(57);
        int compared = 0;
        int minimal = 0;
        for (int run = 0; run < 120; run++) {
            Formula formula = Workbench.random(random);
            Plan plan = plan(formula, 100 + random.nextInt(3000));
            LogWriter log = new LogWriter().add(new BatchEvent.Planned(plan)).vessel("pot");
            PlannedLine victim = plan.lines().get(random.nextInt(plan.lines().size()));
            if (victim.target().compareTo(Grams.of("2")) < 0) {
                continue;
            }
            pourSome(log, plan, victim, random);
            BatchState state = log.state();
            Mend.LargerBatch found = new OverPour(
                            plan, formula, state, List.of(Workbench.KITCHEN, Workbench.FINE), List.of(), Set.of())
                    .ways(victim.lineId()).stream()
                            .filter(Mend.LargerBatch.class::isInstance)
                            .map(Mend.LargerBatch.class::cast)
                            .findFirst()
                            .orElseThrow();
            double least = byProgram(plan, state, false).orElseThrow();
            OptionalDouble inSteps = byProgram(plan, state, true);
            assertThat(found.batch().doubleValue())
                    .as("run " + run + ": nothing lies below the linear program")
                    .isGreaterThanOrEqualTo(least - 1e-6);
            if (inSteps.isPresent()) {
                // The search goes up by 0.05 % at a time.
                assertThat(found.batch().doubleValue())
                        .as("run " + run
                                + ": the least in whole steps, but for one step of the search and of the balances")
                        .isLessThanOrEqualTo(inSteps.getAsDouble() * 1.0005
                                + 0.1 * plan.lines().size() / 2);
                minimal++;
            }
            endsInTolerance(plan, state, found);
            compared++;
        }
        assertThat(compared).isGreaterThan(50);
        assertThat(minimal)
                .as("programs in whole steps that were solved to the end")
                .isGreaterThan(25);
    }

    private static Plan plan(Formula formula, int grams) {
        Bench bench = new Bench(List.of(Workbench.KITCHEN, Workbench.FINE), List.of(), Tolerances.USUAL);
        return new Planner(Workbench.BOOK, bench, Workbench.TODAY)
                .plan(formula, new BatchSize.Stated(new Grams(BigDecimal.valueOf(grams))), Map.of());
    }

    /** Some lines as planned, the victim 5 to 80 % over. */
    private static void pourSome(LogWriter log, Plan plan, PlannedLine victim, Random random) {
        for (PlannedLine line : plan.lines()) {
            if (line.lineId().equals(victim.lineId())) {
                BigDecimal factor = BigDecimal.valueOf(105 + random.nextInt(76), 2);
                log.pour(
                        "pot",
                        line.lineId(),
                        line.materialKey(),
                        new Grams(line.target().value().multiply(factor)),
                        Purpose.LINE);
            } else if (random.nextBoolean() && line.target().signum() > 0) {
                log.pour("pot", line.lineId(), line.materialKey(), line.target(), Purpose.LINE);
            }
        }
    }

    private static BigDecimal step(PlannedLine line) {
        return (line.balance().equals(Workbench.FINE.name()) ? Workbench.FINE : Workbench.KITCHEN)
                .step()
                .value();
    }

    /** In whole steps of the balances where asked. Least M with x_i at least what is in, |x_i - f_i M| at most t_i f_i M, and the x_i adding up to M [g]. */
    private static OptionalDouble byProgram(Plan plan, BatchState state, boolean inSteps) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        model.options.iterations_abort = MOST;
        model.options.time_abort = MOST;
        // Not below the plan, but for the step to which its last line is rounded.
        Variable whole = model.addVariable("M")
                .lower(plan.batch().value().subtract(Workbench.KITCHEN.step().value()))
                .weight(BigDecimal.ONE);
        double in = 0;
        Expression sum = model.addExpression("sum").set(whole, -1);
        for (PlannedLine line : plan.lines()) {
            if (line.target().signum() <= 0) {
                continue;
            }
            double fraction = line.target().doubleValue() / plan.batch().doubleValue();
            double tolerance = tolerance(line);
            // What is added, in steps; what is in stays as it is.
            double there = state.poured(line.lineId()).doubleValue();
            double step = step(line).doubleValue();
            Variable added = model.addVariable(line.lineId()).lower(0).integer(inSteps);
            sum.set(added, step);
            in += there;
            model.addExpression("most " + line.lineId())
                    .upper(-there)
                    .set(added, step)
                    .set(whole, -fraction * (1 + tolerance));
            model.addExpression("least " + line.lineId())
                    .lower(-there)
                    .set(added, step)
                    .set(whole, -fraction * (1 - tolerance));
        }
        sum.level(-in);
        Optimisation.Result result = model.minimise();
        if (inSteps && !result.getState().isOptimal()) {
            // Branching was ended by its limit: nothing is proven.
            return OptionalDouble.empty();
        }
        assertThat(result.getState().isOptimal()).isTrue();
        assertThat(model.validate(result)).isTrue();
        return OptionalDouble.of(result.getValue());
    }

    /** As the search takes it: never more than half of the line. */
    private static double tolerance(PlannedLine line) {
        return Math.min(0.5, line.tolerance().doubleValue() / line.target().doubleValue());
    }

    private static void endsInTolerance(Plan plan, BatchState state, Mend.LargerBatch found) {
        for (PlannedLine line : plan.lines()) {
            if (line.target().signum() <= 0) {
                continue;
            }
            double added = found.additions().stream()
                    .filter(addition -> addition.lineId().equals(line.lineId()))
                    .mapToDouble(addition -> addition.mass().doubleValue())
                    .sum();
            double end = state.poured(line.lineId()).doubleValue() + added;
            double wanted = line.target().doubleValue()
                    / plan.batch().doubleValue()
                    * found.batch().doubleValue();
            assertThat(Math.abs(end - wanted)).isLessThanOrEqualTo(tolerance(line) * wanted + 1e-6);
        }
    }
}
