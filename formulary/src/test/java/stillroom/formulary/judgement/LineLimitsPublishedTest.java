package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.law.LineLimits;
import stillroom.formulary.quantity.PercentRange;

/** Limits: Regulation (EC) No 1223/2009, Annex V, as exported on 2025-11-11, read; molar masses IUPAC 2021. */
class LineLimitsPublishedTest {
    private static Map<String, PercentRange> limits(ProductType type, Line... lines) {
        Formula formula = new Formula(List.of(new Phase("a", "A", List.of(lines), List.of())));
        return LineLimits.of(Subjects.of(formula, Brief.of(type)), Bench.book(), Bench.EVALUATOR.rules(), Bench.TODAY);
    }

    private static Line line(String id, String material, String percent) {
        return new Line(id, material, Amount.fixed(percent), "");
    }

    private static Line water() {
        return new Line("w", "water", new Amount.ToHundred(), "");
    }

    @Test
    void saltIsLimitedByItsAcid() {
        // Annex V, entry 1: 0.5 % as acid in leave-on; 0.5 x 144.105 / 122.123 = 0.590 %
        Map<String, PercentRange> limits = limits(ProductType.FACE_CREAM, water(), line("b", "sodium-benzoate", "0.4"));
        assertThat(limits).containsOnlyKeys("b");
        assertThat(limits.get("b").high().value().doubleValue()).isCloseTo(0.5900, within(5e-5));
    }

    @Test
    void productTypeDecidesWhichRowCounts() {
        // Annex V, entry 1: 2.5 % as acid in rinse-off; 2.5 x 144.105 / 122.123 = 2.950 %
        Map<String, PercentRange> limits = limits(ProductType.HAND_WASH, water(), line("b", "sodium-benzoate", "0.4"));
        assertThat(limits.get("b").high().value().doubleValue()).isCloseTo(2.9500, within(5e-5));
    }

    @Test
    void linesThatShareALimitGrowTogether() {
        // Annex V, entry 29: phenoxyethanol 1 %; two lines of 0.6 and 0.2 % may become 0.75 and 0.25 %
        Map<String, PercentRange> limits = limits(
                ProductType.FACE_CREAM,
                water(),
                line("p", "phenoxyethanol", "0.6"),
                line("q", "phenoxyethanol", "0.2"));
        assertThat(limits.get("p").high().value().doubleValue()).isCloseTo(0.75, within(1e-7));
        assertThat(limits.get("q").high().value().doubleValue()).isCloseTo(0.25, within(1e-7));
    }

    @Test
    void whatNoRowNamesIsNotLimited() {
        assertThat(limits(ProductType.FACE_CREAM, water(), line("g", "glycerin", "5")))
                .isEmpty();
    }
}
