package stillroom.formulary.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Comparison.Pair;

final class ComparisonTest {
    private static Line line(String id, String material, String percent) {
        return new Line(id, material, Amount.fixed(percent), "");
    }

    private static Step step(String id, String doing) {
        return new Step(id, doing, Optional.empty(), "", Optional.empty(), "", "");
    }

    private static Formula formula(Line... lines) {
        return new Formula(List.of(new Phase("p", "Phase", List.of(lines), List.of())));
    }

    private static String shape(Pair<Line> pair) {
        return pair.left().map(placed -> placed.what().id()).orElse("-") + "/"
                + pair.right().map(placed -> placed.what().id()).orElse("-");
    }

    @Test
    void likeFormulasDifferInNothing() {
        Formula formula = formula(line("a", "water", "90"), line("b", "glycerin", "10"));
        assertThat(Comparison.of(formula, formula).lines())
                .noneMatch(Pair::differs)
                .hasSize(2);
    }

    @Test
    void pairsByIdBeforeMaterial() {
        Formula left = formula(line("a", "glycerin", "1"), line("b", "water", "99"));
        Formula right = formula(line("c", "glycerin", "2"), line("a", "water", "98"));
        assertThat(Comparison.of(left, right).lines())
                .extracting(ComparisonTest::shape)
                .containsExactly("-/c", "a/a", "b/-");
    }

    @Test
    void pairsWhatIsLeftByMaterialInOrder() {
        Formula left = formula(line("a", "salt", "1"), line("b", "salt", "2"));
        Formula right = formula(line("x", "salt", "3"), line("y", "salt", "4"), line("z", "salt", "5"));
        assertThat(Comparison.of(left, right).lines())
                .extracting(ComparisonTest::shape)
                .containsExactly("a/x", "b/y", "-/z");
    }

    @Test
    void whatWasTakenOutStandsBehindItsNeighbour() {
        Formula left = formula(line("a", "a", "1"), line("b", "b", "2"), line("c", "c", "3"), line("d", "d", "4"));
        Formula right = formula(line("d", "d", "4"), line("a", "a", "1"));
        assertThat(Comparison.of(left, right).lines())
                .extracting(ComparisonTest::shape)
                .containsExactly("d/d", "a/a", "b/-", "c/-");
    }

    @Test
    void anotherPhaseIsAMoveAndAnotherNameOfThePhaseIsNot() {
        Line a = line("a", "water", "1");
        Formula left = new Formula(List.of(new Phase("p", "Water", List.of(a), List.of(step("s", "stir")))));
        Formula renamed = new Formula(List.of(new Phase("p", "Wet", List.of(a), List.of(step("s", "stir")))));
        Formula moved = new Formula(List.of(new Phase("q", "Oil", List.of(a), List.of(step("t", "stir")))));
        assertThat(Comparison.of(left, renamed).lines().get(0).differs()).isFalse();
        assertThat(Comparison.of(left, moved).lines().get(0).moved()).isTrue();
        assertThat(Comparison.of(left, moved).steps()).singleElement().matches(Pair::moved, "paired by what is done");
    }
}
