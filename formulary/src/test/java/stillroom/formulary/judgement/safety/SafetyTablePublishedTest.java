package stillroom.formulary.judgement.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.safety.PointOfDeparture.Found;
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
        // Over all products together: 100 / (269 × 0.01 × 0.5) = 74.3.
        assertThat(line.isBelowTogether()).isTrue();
        // The committee's phenoxyethanol opinion accepts 25 instead of 100 (SCCS/1575/16, read): another margin needs a
        // reason.
        assertThat(line(
                                ProductType.BODY_LOTION,
                                new PointOfDeparture(10, Found.NO_ADVERSE_EFFECT, false, 1, 25, "SCCS/1575/16"))
                        .isBelow())
                .isTrue();
    }

    private static double number(Outcome<Double> outcome) {
        return outcome.match(known -> known, because -> Double.NaN);
    }

    private static SafetyLine line(ProductType type, PointOfDeparture departure) {
        Bench book = Bench.book();
        Evaluation judged = Bench.EVALUATOR.evaluate(
                Subjects.of(Bench.formula("water", "q.s.", "phenoxyethanol", "1"), Brief.of(type)), book, Bench.TODAY);
        SafetyInput input = new SafetyInput(Optional.of(departure), Optional.empty(), "");
        SafetyTable table = SafetyTable.of(
                judged.composition(),
                type,
                book,
                RULES,
                new SafetyInputs(Map.of("phenoxyethanol", input), Optional.empty()));
        return table.lines().stream()
                .filter(line -> line.substance().equals("phenoxyethanol"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Ingredients of an emulsion, 123.2 mg/kg/d of body lotion, absorbed in full. Source: BioMed Research International
     * 2013, 181634, table 6, read; printed to two decimals.
     */
    @ParameterizedTest
    @CsvSource({"5.0, 6.16", "4.0, 4.93", "2.0, 2.46", "0.3, 0.37", "0.075, 0.09", "10.0, 12.32"})
    void systemicExposureAsPrintedForAnEmulsion(double percent, double printed) {
        assertThat(SafetyTable.systemicExposure(123.2, percent / 100, 1)).isEqualTo(printed, within(0.0051));
    }

    /** Aggregate of preservatives 269 mg/kg/d, 1 %, 50 % absorbed, dose 357 mg/kg/d: margin 265.43, recomputed. */
    @Test
    void preservativesAreReckonedOverAllProductsTogether() {
        SafetyLine line = line(ProductType.BODY_LOTION, PointOfDeparture.systemic(357, "worked case"));
        assertThat(number(line.aggregateMargin())).isEqualTo(265.43, within(0.01));
    }

    /** Lowest dose with an effect: divided by 3; a short study: by 3 again; half of an oral dose reaches the body. */
    @Test
    void lesserStudiesAreDivided() {
        PointOfDeparture lesser = new PointOfDeparture(90, Found.LOWEST_ADVERSE_EFFECT, true, 0.5, 100, "worked case");
        assertThat(lesser.systemicMilligramsPerKilogramDay()).isEqualTo(5, within(1e-12));
    }

    @Test
    void anExposureOfOnesOwnTakesThePlaceOfTheTable() {
        Bench book = Bench.book();
        Evaluation judged = Bench.EVALUATOR.evaluate(
                Subjects.of(Bench.formula("water", "q.s.", "phenoxyethanol", "1"), Brief.of(ProductType.TONER)),
                book,
                Bench.TODAY);
        SafetyInputs inputs =
                new SafetyInputs(Map.of(), Optional.of(new OwnExposure(12.5, "survey of the workshop, invented")));
        SafetyTable table = SafetyTable.of(judged.composition(), ProductType.TONER, book, RULES, inputs);
        assertThat(number(table.lines().get(1).systemicMilligramsPerKilogramDay()))
                .isEqualTo(12.5 * 0.01 * 0.5, within(1e-12));
        assertThat(table.lines().get(1).absorptionSource()).contains("default");
        assertThat(table.exposureSource()).contains("survey");
        // Water is no preservative: that is why it has no margin over all products, not a missing dose.
        String because = table.lines().get(0).aggregateMargin().match(known -> "", reason -> reason);
        assertThat(because).contains("preservatives only");
    }

    @Test
    void missingFiguresAreSaid() {
        SafetyLine toner = line(ProductType.TONER, PointOfDeparture.systemic(100, "worked case"));
        String because = toner.margin().match(known -> "", reason -> reason);
        assertThat(because).contains("no exposure figure");
        assertThat(toner.isBelow()).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PointOfDeparture(100, Found.NO_ADVERSE_EFFECT, false, 1, 25, " "));
    }
}
