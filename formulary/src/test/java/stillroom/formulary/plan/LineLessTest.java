package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

class LineLessTest {
    /** 200 g of the toner with 3 g humectant too much, and a batch that lacks 3 g: together every line is as asked. */
    @Test
    void theTwoTogetherAreTheFormulaAgain() {
        for (String over : List.of("h", "w", "p")) {
            Grams less = over.equals("p") ? g("1.8") : g("3");
            LineLess line = new LineLess(over, less, g("200").minus(less));
            assertThat(line.fits(Workbench.toner())).isTrue();
            Plan first = plan(Workbench.toner(), g("200"), Map.of());
            Plan second = plan(line.applied(Workbench.toner()), line.mass(), line.applied(limits()));
            assertThat(second.refused()).isFalse();
            assertThat(second.batch().plus(first.batch()).plus(less)).isEqualTo(g("400"));
            for (PlannedLine one : first.lines()) {
                Grams of = second.line(one.lineId()).map(PlannedLine::target).orElse(Grams.ZERO);
                Grams together = one.target().plus(of).plus(one.lineId().equals(over) ? less : Grams.ZERO);
                BigDecimal asked = one.asked().of(g("400")).value();
                if (!one.toReading()) {
                    // Two roundings to the steps of 0.01 and 0.1 g; the residue of both lies on the largest line.
                    assertThat(together.value().subtract(asked).abs()).isLessThanOrEqualTo(new BigDecimal("0.1"));
                }
            }
        }
    }

    @Test
    void aLineCannotLackMoreThanItHolds() {
        assertThat(new LineLess("h", g("7"), g("100")).fits(Workbench.toner())).isFalse();
        assertThat(new LineLess("c", g("0.1"), g("100")).fits(Workbench.toner()))
                .isFalse();
    }

    private static Map<String, PercentRange> limits() {
        return Map.of("p", new PercentRange(Percent.of("0.9"), Percent.of("1")));
    }

    private static Plan plan(Formula formula, Grams mass, Map<String, PercentRange> allowed) {
        Bench bench = new Bench(List.of(Workbench.KITCHEN, Workbench.FINE), List.of(), Tolerances.USUAL);
        return new Planner(Workbench.BOOK, bench, Workbench.TODAY).plan(formula, new BatchSize.Stated(mass), allowed);
    }
}
