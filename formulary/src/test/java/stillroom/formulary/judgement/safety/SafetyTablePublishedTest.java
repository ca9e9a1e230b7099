package stillroom.formulary.judgement.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.rule.RuleBook;

/**
 * Worked margins: exposure of SCCS/1647/22, tables 3A and 3B (read in a quotation), formulas of its sections 3 and 4 (from
 * memory), the rest recomputed by hand.
 */
class SafetyTablePublishedTest {
    private static final RuleBook RULES = Bench.EVALUATOR.rules();

    @ParameterizedTest
    @CsvSource({"123.20, 0.01, 0.6160", "2.79, 0.05, 0.06975", "269, 0.01, 1.345"})
    void systemicExposure(double exposure, double content, double expected) {
        assertThat(SafetyTable.systemicExposure(exposure, content, 0.5)).isEqualTo(expected, within(1e-9));
    }

    /** Printed columns agree among themselves: q/bw times retention is the exposure (read). */
    @ParameterizedTest
    @CsvSource({
        "SHOWER_GEL, 279.20, 0.01", "SHAMPOO, 150.49, 0.01", "HAIR_LEAVE_IN, 57.40, 0.10", "BODY_LOTION, 123.20, 1",
        "FACE_CREAM, 24.14, 1", "HAND_CREAM, 32.70, 1", "DEODORANT, 22.08, 1", "LIP_PRODUCT, 0.90, 1"
    })
    void exposureTableAgreesWithItself(ProductType type, double appliedPerKilogram, double retention) {
        assertThat(Objects.requireNonNull(RULES.exposure().get(type)).milligramsPerKilogramDay())
                .isEqualTo(appliedPerKilogram * retention, within(0.0051));
    }

    @Test
    void marginOfOnePercentInABodyLotion() {
        SafetyLine line = line(ProductType.BODY_LOTION, PointOfDeparture.systemic(100, "worked case"));
        double margin = line.margin().match(known -> known, because -> 0.0);
        assertThat(margin).isEqualTo(162.338, within(1e-3));
        assertThat(line.isBelow()).isFalse();
        // The committee's phenoxyethanol opinion accepts 25 instead of 100 (SCCS/1575/16, read): another margin needs a
        // reason.
        assertThat(line(ProductType.BODY_LOTION, new PointOfDeparture(10, 1, 25, "SCCS/1575/16"))
                        .isBelow())
                .isTrue();
    }

    private static SafetyLine line(ProductType type, PointOfDeparture departure) {
        Bench book = Bench.book();
        Evaluation judged = Bench.EVALUATOR.evaluate(
                Subjects.of(Bench.formula("water", "q.s.", "phenoxyethanol", "1"), Brief.of(type)), book, Bench.TODAY);
        List<SafetyLine> lines =
                SafetyTable.of(judged.composition(), type, book, RULES, Map.of("phenoxyethanol", departure), Map.of());
        return lines.stream()
                .filter(line -> line.substance().equals("phenoxyethanol"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void missingFiguresAreSaid() {
        SafetyLine toner = line(ProductType.TONER, PointOfDeparture.systemic(100, "worked case"));
        String because = toner.margin().match(known -> "", reason -> reason);
        assertThat(because).contains("no exposure figure");
        assertThat(toner.isBelow()).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> new PointOfDeparture(100, 1, 25, " "));
    }
}
