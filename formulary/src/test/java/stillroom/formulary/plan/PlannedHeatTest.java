package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.line;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;

class PlannedHeatTest {
    private static final MaterialBook BOOK =
            new CardsInstead(Workbench.BOOK, Map.of("oil-1", bears("oil-1", 60), "active-1", bears("active-1", 45)));

    /**
     * Held 20 min at 75 degrees; then 30 min from 75 to 40. Newton's law of cooling into 20 degrees: of these,
     * ln(55/40) / ln(55/20) = 0.3148 are above 60, which is 9.44 min (computed).
     */
    @Test
    void coolingCountsAsLongAsItIsAboveTheLimitAndGrowsWithTheMass() {
        List<PlannedHeat> heats = PlannedHeat.of(emulsion(Optional.of(30.0)), BOOK, Step::minutes);
        assertThat(heats).hasSize(1);
        PlannedHeat oil = heats.get(0);
        assertThat(oil.materialKey()).isEqualTo("oil-1");
        assertThat(oil.minutes()).isCloseTo(29.44, offset(0.01));
        assertThat(oil.minutes(ScaleUp.coolingFactor(40))).isCloseTo(20 + 9.443 * 3.41995, offset(0.01));
        assertThat(oil.hottest()).isEqualTo(75);
        assertThat(oil.untimed()).isFalse();
    }

    @Test
    void aHotStepWithoutMinutesMakesTheSumAPartOfIt() {
        PlannedHeat oil =
                PlannedHeat.of(emulsion(Optional.empty()), BOOK, Step::minutes).get(0);
        assertThat(oil.untimed()).isTrue();
        assertThat(oil.minutes()).isEqualTo(20);
    }

    @Test
    void thePlanSaysWhatItWasAndWhatItWillAtLeastBe() {
        Bench bench = new Bench(List.of(Workbench.KITCHEN), List.of(), Tolerances.USUAL);
        Formula formula = emulsion(Optional.of(30.0));
        Plan plan = new Planner(BOOK, bench, LocalDate.of(2026, 3, 1))
                .plan(formula, new BatchSize.Stated(Workbench.g("4000")), Map.of());
        List<String> says = new ScaleUp(
                        plan,
                        formula,
                        BOOK,
                        Optional.of(Grams.of("100")),
                        Optional.empty(),
                        bench.balances(),
                        Map.of("cool", 40.0))
                .advice().stream().map(PlannedLine.Advice::says).toList();
        // Logged in the largest batch: 40 min, so 0.3148 of it is 12.59; at 40 times the mass 43.06; 20 min are held.
        assertThat(says)
                .contains(
                        "oil-1 bears 60.0 °C. So far it stood 32.6 min above that, up to 75.0 °C; in this batch at least 63.1 min.");
    }

    private static Material bears(String key, double celsius) {
        Material card = Material.named(key, key, Family.OIL);
        return new Material(
                card.key(),
                card.revision(),
                card.revisedOn(),
                card.name(),
                card.family(),
                card.functions(),
                card.composition(),
                card.strength(),
                card.usage(),
                card.workingPh(),
                card.ownPh(),
                card.densityGramsPerMillilitre(),
                card.solubility(),
                Optional.of(celsius),
                card.cautions(),
                card.grade(),
                card.supplier(),
                card.price(),
                card.note(),
                card.naturalOriginIndex(),
                card.sources());
    }

    /** Water and oil heated beside each other, joined, and cooled before the active goes in. */
    private static Formula emulsion(Optional<Double> cooling) {
        return new Formula(List.of(
                new Phase(
                        "oil",
                        "oil",
                        List.of(line("o", "oil-1", Amount.fixed("20"))),
                        List.of(step("melt", 75, Optional.of(20.0)))),
                new Phase(
                        "water",
                        "water",
                        List.of(line("w", "water", new Amount.ToHundred())),
                        List.of(step("heat", 75, Optional.of(20.0)), step("cool", 40, cooling))),
                new Phase(
                        "cool",
                        "cool",
                        List.of(line("a", "active-1", Amount.fixed("1"))),
                        List.of(step("stir", 35, Optional.of(10.0))))));
    }

    private static Step step(String id, double celsius, Optional<Double> minutes) {
        return new Step(id, id, Optional.of(celsius), "", minutes, "", "");
    }
}
