package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;

class ScaleUpTest {
    private static final List<Balance> BALANCES = List.of(Workbench.KITCHEN, Workbench.FINE);

    /** Cube root of 40 is 3.42 (computed): a body of the same shape cools at least so much longer. */
    @Test
    void fortyfoldMassCoolsLonger() {
        assertThat(ScaleUp.coolingFactor(40)).isCloseTo(3.42, offset(0.005));
    }

    @Test
    void fortyTimesTheLargestIsALeapAndTimesAreMeasuredAgain() {
        List<String> says = says("8000", Optional.of(g("200")), Optional.of(g("12000")));
        assertThat(says).anyMatch(s -> s.contains("40.0 times the largest"));
        assertThat(says).anyMatch(s -> s.contains("at least 3.4 times as long"));
        assertThat(says).anyMatch(s -> s.contains("\"Melt.\" was timed"));
        assertThat(says).anyMatch(s -> s.contains("water is more than bench balance holds"));
        assertThat(says).noneMatch(s -> s.contains("fills the vessel"));
    }

    @Test
    void theVesselIsNeitherTooFullNorTooEmpty() {
        assertThat(says("900", Optional.empty(), Optional.of(g("1000"))))
                .containsExactly("The batch fills the vessel to 90.0 %.");
        assertThat(says("300", Optional.empty(), Optional.of(g("1000"))))
                .containsExactly("The batch fills the vessel to 30.0 %.");
        assertThat(says("600", Optional.of(g("600")), Optional.of(g("1000")))).isEmpty();
    }

    private static List<String> says(String batch, Optional<Grams> before, Optional<Grams> vessel) {
        Plan plan = new Planner(Workbench.BOOK, new Bench(BALANCES, List.of(), Tolerances.USUAL), Workbench.TODAY)
                .plan(heated(), new BatchSize.Stated(g(batch)), Map.of());
        return new ScaleUp(plan, heated(), Workbench.BOOK, before, vessel, BALANCES, Map.of())
                .advice().stream().map(Advice::says).toList();
    }

    private static Formula heated() {
        Phase a = Workbench.toner().phases().get(0);
        Step melt = new Step("a1", "Melt.", Optional.of(70.0), "", Optional.of(20.0), "", "hot");
        return new Formula(List.of(
                new Phase(a.id(), a.name(), a.lines(), List.of(melt)),
                Workbench.toner().phases().get(1)));
    }
}
