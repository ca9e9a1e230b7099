package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.weighing.Dilution;

/** Premixes over random formulas, balances and batch sizes. */
class PremixUseTest {
    @Test
    void aPremixReproducesTheCompositionWithinItsStatedUncertainty() {
        Random random = new Random(41);
        int premixes = 0;
        int twoSteps = 0;
        for (int run = 0; run < 3000; run++) {
            Formula formula = formula(random);
            Balance balance = balance(random);
            Planner planner = new Planner(
                    Workbench.BOOK, new Bench(List.of(balance), List.of(), Tolerances.USUAL), Workbench.TODAY);
            BatchSize size = new BatchSize.Stated(new Grams(BigDecimal.valueOf(50 + random.nextInt(4000))));
            Optional<PremixPlan> premix = planner.premix(formula, size, Map.of(), "x");
            if (premix.isEmpty()) {
                continue;
            }
            premixes++;
            Dilution dilution = premix.get().dilution();
            twoSteps += dilution.steps().size() - 1;
            bothWeighingsAreInRange(dilution, balance);
            usedItGivesTheSameProduct(formula, size, planner, premix.get(), balance);
        }
        assertThat(premixes).isGreaterThan(500);
        assertThat(twoSteps).isGreaterThan(20);
    }

    private static void bothWeighingsAreInRange(Dilution dilution, Balance balance) {
        Grams minimum = new Weighing(balance, true).minimum(Percent.of("2"));
        for (Dilution.Step step : dilution.steps()) {
            assertThat(step.concentrate())
                    .isGreaterThanOrEqualTo(new Weighing(balance, false)
                            .minimum(Percent.of("2"))
                            .value());
            assertThat(step.carrier())
                    .isGreaterThanOrEqualTo(new Weighing(balance, false)
                            .minimum(Percent.of("2"))
                            .value());
            assertThat(step.made()).isLessThanOrEqualTo(balance.maximum().value());
        }
        assertThat(minimum.signum()).isPositive();
        assertThat(dilution.waste().signum()).isNotNegative();
    }

    private static void usedItGivesTheSameProduct(
            Formula formula, BatchSize size, Planner planner, PremixPlan premix, Balance balance) {
        double strength = 1;
        for (Dilution.Step step : premix.dilution().steps()) {
            strength *= step.concentrate().doubleValue() / step.made().doubleValue();
        }
        PremixUse use = new PremixUse(
                "x",
                "active-9",
                new Percent(new BigDecimal(100 * strength)),
                premix.carrier().id());
        assertThat(use.fits(formula)).isTrue();
        Grams batch = ((BatchSize.Stated) size).mass();
        Plan plan = planner.plan(use.applied(formula), size, Map.of());

        assertThat(Grams.sum(plan.lines().stream().map(PlannedLine::target).toList()))
                .as("the sum stays exact")
                .isEqualTo(batch);
        double portion = plan.line("x").orElseThrow().target().doubleValue();
        double wanted = formula.line("x")
                .orElseThrow()
                .amount()
                .match(fixed -> fixed.percent().of(batch), () -> Grams.ZERO, reading -> Grams.ZERO)
                .doubleValue();
        double half = balance.step().doubleValue() / 2;
        assertThat(Math.abs(portion * strength - wanted))
                .as("the line brings what the formula asks, within a rounding of the portion")
                .isLessThanOrEqualTo(half * strength + 1e-9);
        double carrier =
                plan.line(premix.carrier().id()).orElseThrow().target().doubleValue() + portion * (1 - strength);
        double carrierWanted =
                new ResolvedCarrier(formula, premix.carrier().id()).percent() * batch.doubleValue() / 100;
        assertThat(Math.abs(carrier - carrierWanted))
                .as("the carrier gives up what the premix brings")
                .isLessThanOrEqualTo(half * (plan.lines().size() + 1));
        assertThat(2 * premix.dilution().deviation().doubleValue())
                .as("the stated uncertainty stays within the tolerance of the line")
                .isLessThanOrEqualTo(0.02 * wanted + 1e-9);
    }

    private record ResolvedCarrier(Formula formula, String id) {
        double percent() {
            double others = formula.lines().stream()
                    .mapToDouble(line -> line.amount()
                            .match(fixed -> fixed.percent().value().doubleValue(), () -> 0.0, reading -> 0.0))
                    .sum();
            return formula.line(id)
                    .orElseThrow()
                    .amount()
                    .match(fixed -> fixed.percent().value().doubleValue(), () -> 100 - others, reading -> 0.0);
        }
    }

    private static Formula formula(Random random) {
        Percent tiny = new Percent(BigDecimal.valueOf(1 + random.nextInt(400), 3 + random.nextInt(2)));
        boolean inWater = random.nextBoolean();
        List<Line> first = List.of(
                new Line("w", "water", new Amount.ToHundred(), ""),
                new Line("g", "humectant-1", new Amount.Fixed(Percent.of("4")), ""));
        List<Line> second = List.of(new Line("o", "oil-1", new Amount.Fixed(Percent.of("20")), ""));
        Line x = new Line("x", "active-1", new Amount.Fixed(tiny), "");
        return new Formula(List.of(
                new Phase("a", "water", inWater ? plus(first, x) : first, List.of()),
                new Phase("b", "oil", inWater ? second : plus(second, x), List.of())));
    }

    private static List<Line> plus(List<Line> lines, Line more) {
        return java.util.stream.Stream.concat(lines.stream(), java.util.stream.Stream.of(more))
                .toList();
    }

    private static Balance balance(Random random) {
        String[] steps = {"0.001", "0.01", "0.05", "0.1", "0.5"};
        String step = steps[random.nextInt(steps.length)];
        return new Balance("scale", Grams.of(step), Optional.empty(), Grams.of("6000"));
    }

    @Test
    void limitsOfTheMaterialBecomeLimitsOfThePremix() {
        PremixUse use = new PremixUse("x", "active-9", Percent.of("10"), "w");
        Map<String, PercentRange> scaled = use.applied(Map.of("x", PercentRange.of("0.2", "0.5")));
        assertThat(scaled.get("x")).isEqualTo(PercentRange.of("2", "5"));
    }

    @Test
    void sameActiveIsTakenFromTheLineThatFillsUp() {
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "A",
                List.of(
                        new Line("w", "water", new Amount.ToHundred(), ""),
                        new Line("b", "surfactant-1", Amount.fixed("20"), "")),
                List.of())));
        Formula as = new SameActive("b", 1.25).applied(formula);
        assertThat(as.line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("16"));
        assertThat(new SameActive("w", 1.25).fits(formula)).isFalse();
    }
}
