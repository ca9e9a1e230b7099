package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stillroom.formulary.plan.Workbench.g;
import static stillroom.formulary.plan.Workbench.line;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.plan.PlannedLine.LotShare;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

class PlannerTest {
    private static final BatchSize KILO = new BatchSize.Stated(g("1000"));

    @Test
    void resolvesQsAndReservesWhatAReadingWillTake() {
        Plan plan = planner(List.of()).plan(Workbench.toner(), KILO, Map.of());
        assertThat(plan.line("w").orElseThrow().asked()).isEqualTo(Percent.of("95.4"));
        assertThat(plan.line("w").orElseThrow().target()).isEqualTo(g("954"));
        assertThat(plan.line("c").orElseThrow().toReading()).isTrue();
        assertThat(plan.residue()).contains("w");
    }

    /** 9 g of preservative at 2 % need 4.1 g at a step of 0.1 g, 5.8 g into a filled vessel; 2 g of acid at 5 % do not. */
    @Test
    void coarsestBalanceThatServesTakesTheLine() {
        Plan plan = planner(List.of()).plan(Workbench.toner(), KILO, Map.of());
        assertThat(plan.line("p").orElseThrow().balance()).isEqualTo("bench balance");
        assertThat(plan.line("p").orElseThrow().tolerance()).isEqualTo(g("0.1"));
        assertThat(plan.line("c").orElseThrow().balance()).isEqualTo("fine balance");
        assertThat(plan.line("c").orElseThrow().target()).isEqualTo(g("2"));
    }

    @Test
    void belowTheMinimumWeightChoicesAreGivenAndNothingIsRefused() {
        Plan plan = planner(List.of()).plan(Workbench.toner(), new BatchSize.Stated(g("20")), Map.of());
        Advice advice = weightAdvice(plan.line("p").orElseThrow());
        assertThat(advice.refuses()).isFalse();
        assertThat(advice.choices()).hasSize(2).anyMatch(says -> says.startsWith("Make a batch of 46 g or more"));
        assertThat(advice.choices()).anyMatch(says -> says.contains("a step of 0.001 g"));
    }

    @Test
    void belowTheMinimumWeightAtALimitIsRefused() {
        Map<String, PercentRange> allowed = Map.of("p", PercentRange.of("0.88", "1"));
        Plan plan = planner(List.of()).plan(Workbench.toner(), new BatchSize.Stated(g("20")), allowed);
        assertThat(weightAdvice(plan.line("p").orElseThrow()).refuses()).isTrue();
        assertThat(plan.refused()).isTrue();
        assertThat(planner(List.of()).plan(Workbench.toner(), KILO, allowed).refused())
                .isFalse();
    }

    /** By hand: 0.78 * 0.78 / 6.08 = 0.1001 g; 2 * 0.0058 * root(1/0.78^2 + (0.872/0.78)^2 + 1/6.08^2) = 1.98 %. */
    @Test
    void premixInTheLargestLineOfThePhaseIsOffered() {
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "all",
                List.of(line("w", "water", new Amount.ToHundred()), line("x", "active-1", Amount.fixed("0.05"))),
                List.of())));
        Plan plan = planner(List.of()).plan(formula, new BatchSize.Stated(g("200")), Map.of());
        assertThat(weightAdvice(plan.line("x").orElseThrow()).choices())
                .contains(
                        "Make a premix: 0.78 g of it into 5.3 g water. Weigh 0.78 g of the premix, and 0.68 g less of water.");
    }

    /** Common practice, no source: a gum is wetted in glycerin, since it lumps in little water. */
    @Test
    void aGumIsPremixedInWhatWetsItNotInWater() {
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "all",
                List.of(
                        line("w", "water", new Amount.ToHundred()),
                        line("h", "humectant-1", Amount.fixed("5")),
                        line("x", "thickener-1", Amount.fixed("0.05"))),
                List.of())));
        Plan plan = planner(List.of()).plan(formula, new BatchSize.Stated(g("200")), Map.of());
        assertThat(weightAdvice(plan.line("x").orElseThrow()).choices())
                .anyMatch(says -> says.startsWith("Make a premix: ") && says.endsWith(" g less of humectant 1."));
    }

    /** As a sheet leaves it that says "citric acid, q.s. to pH" and no more. */
    @Test
    void anAcidUpToThePhIsPlannedThoughNobodySaidHowMuch() {
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "all",
                List.of(
                        line("w", "water", new Amount.ToHundred()),
                        line("h", "humectant-1", Amount.fixed("5")),
                        line(
                                "x",
                                "acid-1",
                                new Amount.ToReading(ReadingKind.PH, Percent.ZERO, PercentRange.of("0", "0")))),
                List.of())));
        Plan plan = planner(List.of()).plan(formula, KILO, Map.of());
        PlannedLine acid = plan.line("x").orElseThrow();
        assertThat(acid.toReading()).isTrue();
        assertThat(acid.target()).isEqualTo(Grams.ZERO);
        assertThat(acid.advice()).extracting(Advice::says).containsExactly("How much is expected is not stated.");
        assertThat(plan.refused()).isFalse();
        assertThat(Grams.sum(plan.lines().stream().map(PlannedLine::target).toList()))
                .isEqualTo(g("1000"));
    }

    @Test
    void roundingNeverCrossesALimit() {
        Formula formula = Workbench.toner();
        Map<String, PercentRange> allowed = Map.of("p", PercentRange.of("0", "0.9"));
        Plan plan = new Planner(Workbench.BOOK, bench(List.of(Workbench.KITCHEN), List.of()), Workbench.TODAY)
                .plan(formula, new BatchSize.Stated(g("1007")), allowed);
        assertThat(plan.line("p").orElseThrow().target()).isEqualTo(g("9"));
    }

    /** 9 g +-0.1 g where 0.905 % of 1000 g are allowed: 9.05 g, on a step of 0.1 g 9.0 g. */
    @Test
    void theLimitComesBeforeTheTolerance() {
        Map<String, PercentRange> allowed =
                Map.of("p", PercentRange.of("0", "0.905"), "c", PercentRange.of("0", "0.35"));
        Plan plan = planner(List.of()).plan(Workbench.toner(), KILO, allowed);
        assertThat(plan.line("p").orElseThrow().advice()).anyMatch(a -> a.says().startsWith("Not above 9 g"));
        assertThat(plan.line("c").orElseThrow().advice()).anyMatch(a -> a.says().startsWith("Stop at 3.5 g"));
        assertThat(plan.refused()).isFalse();
    }

    @Test
    void aFormulaBeyondTheLimitIsRefusedNotMended() {
        Map<String, PercentRange> allowed = Map.of("p", PercentRange.of("0", "0.5"));
        Plan plan = planner(List.of()).plan(Workbench.toner(), KILO, allowed);
        assertThat(plan.line("p").orElseThrow().target()).isEqualTo(g("9"));
        assertThat(plan.line("p").orElseThrow().advice()).anyMatch(Advice::refuses);
    }

    @Test
    void firstExpiredGoesFirstAndDoubtfulLotsLastWithAWord() {
        List<LotStock> shelf = List.of(
                new LotStock(Workbench.lot("H3", "humectant-1", Lot.State.RELEASED, "2026-01-31"), g("500")),
                new LotStock(Workbench.lot("H2", "humectant-1", Lot.State.RELEASED, "2027-01-31"), g("10")),
                new LotStock(Workbench.lot("H1", "humectant-1", Lot.State.RELEASED, "2026-12-31"), g("15")));
        Plan plan = planner(shelf).plan(Workbench.toner(), KILO, Map.of());
        PlannedLine line = plan.line("h").orElseThrow();
        assertThat(line.lots())
                .containsExactly(new LotShare("H1", g("15")), new LotShare("H2", g("10")), new LotShare("H3", g("5")));
        assertThat(line.advice()).anyMatch(a -> a.says().contains("H3 expired on 2026-01-31") && !a.refuses());
        assertThat(plan.shortages())
                .contains(new Plan.Shortage("humectant-1", g("30"), g("25"), g("5")))
                .noneMatch(s -> s.materialKey().equals("water"));
    }

    @Test
    void sizeFromContainersDividesByWhatIsKept() {
        BatchSize size = new BatchSize.FromContainers(20, g("100"), g("50"), Percent.of("10"));
        Plan plan = planner(List.of()).plan(Workbench.toner(), size, Map.of());
        assertThat(plan.batch()).isEqualTo(g("2277.8"));
        assertThat(plan.reckoning()).contains("÷ (1 − 10 %)");
    }

    @Test
    void whatCannotBePlannedIsSaidBesideItsField() {
        Formula short98 =
                new Formula(List.of(new Phase("a", "all", List.of(line("x", "oil-1", Amount.fixed("98"))), List.of())));
        List<Problem> problems = PlanProblems.of(short98, new BatchSize.Stated(g("0")));
        assertThat(problems).extracting(Problem::field).containsExactly("formula", "mass");
        assertThatThrownBy(() -> planner(List.of()).plan(short98, KILO, Map.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Advice weightAdvice(PlannedLine line) {
        return line.advice().stream()
                .filter(a -> a.says().contains("the least that"))
                .findFirst()
                .orElseThrow();
    }

    private static Planner planner(List<LotStock> shelf) {
        return new Planner(Workbench.BOOK, bench(List.of(Workbench.KITCHEN, Workbench.FINE), shelf), Workbench.TODAY);
    }

    private static Bench bench(List<Balance> balances, List<LotStock> shelf) {
        return new Bench(balances, shelf, Tolerances.USUAL);
    }
}
