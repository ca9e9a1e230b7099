package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

class EvaluatorTest {
    private final Bench book = Bench.book();

    @Test
    void activeMatterIsSummedByChargeFromConstituents() {
        Evaluation washing = book.judge(
                ProductType.HAND_WASH,
                "water",
                "q.s.",
                "sles-70",
                "20",
                "capb-30",
                "10",
                "coco-glucoside-51",
                "5",
                "sodium-benzoate",
                "0.5");
        // 20 % of 70 %, 10 % of 30 %, 5 % of 51 %: arithmetic; supply strengths from memory.
        assertThat(active(washing, ChargeClass.ANIONIC)).isEqualTo(14.0, within(1e-9));
        assertThat(active(washing, ChargeClass.AMPHOTERIC)).isEqualTo(3.0, within(1e-9));
        assertThat(active(washing, ChargeClass.NONIONIC)).isEqualTo(2.55, within(1e-9));
        assertThat(washing.composition()
                        .share("sodium-chloride")
                        .orElseThrow()
                        .asAdded()
                        .nominal())
                .isEqualTo(0.0055, within(1e-12));
        assertThat(washing.figures().totalPercent().value()).isEqualTo(100.0);
        assertThat(washing.figures().waterPercent().value())
                .isEqualTo(64.5 + 20 * 0.30 + 10 * 0.645 + 5 * 0.49, within(1e-9));
    }

    private static double active(Evaluation evaluation, ChargeClass charge) {
        return Objects.requireNonNull(evaluation.figures().activeMatterPercent().get(charge))
                .value();
    }

    @Test
    void badDraftsGetFindingsAndNoRefusal() {
        assertThat(Bench.warnings(book.judge(ProductType.BALM, "helianthus-annuus-seed-oil", "90")))
                .containsExactly("balance.total");
        assertThat(Bench.warnings(book.judge(
                        ProductType.OTHER_RINSE_OFF, "water", "q.s.", "glycerin", "q.s.", "phenoxyethanol", "0.8")))
                .containsExactly("balance.two-to-hundred");
        assertThat(Bench.warnings(book.judge(
                        ProductType.BODY_OIL, "helianthus-annuus-seed-oil", "100", "water", "q.s.", "glycerin", "5")))
                .contains("balance.nothing-left")
                .doesNotContain("balance.total");
        Evaluation zero = book.judge(ProductType.BODY_OIL, "helianthus-annuus-seed-oil", "100", "glycerin", "0");
        assertThat(Bench.finding(zero, "balance.zero-line").orElseThrow().kind())
                .isEqualTo(Finding.Kind.LOOK_AT_THIS);
        Evaluation stranger = book.judge(ProductType.BODY_OIL, "helianthus-annuus-seed-oil", "99", "unheard-of", "1");
        assertThat(Bench.finding(stranger, "knowledge.composition")
                        .orElseThrow()
                        .says())
                .isEqualTo("No composition for unheard-of (no card).");
        assertThat(book.judge(ProductType.BALM).warnings()).isEmpty();
    }

    @Test
    void lineUpToAReadingIsReservedFromTheRestAndJudgedAtItsUpperEnd() {
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "A",
                List.of(
                        new Line("w", "water", new Amount.ToHundred(), ""),
                        new Line(
                                "p",
                                "phenoxyethanol",
                                new Amount.ToReading(
                                        ReadingKind.ODOUR, Percent.of("0.9"), PercentRange.of("0.5", "1.1")),
                                "")),
                List.of())));
        Subject subject = Subjects.of(formula, Brief.of(ProductType.FACE_CREAM));
        assertThat(subject.portions().get(0).share().nominal()).isEqualTo(0.991);
        assertThat(subject.portions().get(0).share().lower()).isEqualTo(0.989);
        Evaluation judged = Bench.EVALUATOR.evaluate(subject, book, Bench.TODAY);
        assertThat(Bench.warnings(judged)).containsExactly("eu-annex-v-29");
        assertThat(judged.warnings().get(0).says()).contains("upper end");
    }

    @Test
    void premixesOpenThroughPremixesAndLoopsAreNamed() {
        book.mixture("inner", Family.OTHER, "phenoxyethanol", 0.5, "glycerin", 0.5);
        book.mixture("outer", Family.OTHER, "material:inner", 0.4, "water", 0.6);
        Evaluation judged = book.judge(ProductType.FACE_CREAM, "water", "q.s.", "outer", "10");
        assertThat(judged.composition()
                        .share("phenoxyethanol")
                        .orElseThrow()
                        .asAdded()
                        .nominal())
                .isEqualTo(0.02, within(1e-12));
        book.card("snake", Family.OTHER, Constituent.exactly("material:tail", 1));
        book.card("tail", Family.OTHER, Constituent.exactly("material:snake", 1));
        Evaluation loop = book.judge(ProductType.FACE_CREAM, "water", "q.s.", "snake", "10", "phenoxyethanol", "0.8");
        assertThat(Bench.finding(loop, "knowledge.loop").orElseThrow().says()).contains("snake → tail → snake");
        assertThat(loop.composition().unknownFraction()).isEqualTo(0.1, within(1e-12));
    }

    @Test
    void evaporationConcentratesEverythingButWater() {
        Subject subject = Subjects.of(
                Bench.formula("water", "q.s.", "glycerin", "20", "phenoxyethanol", "0.8"),
                Brief.of(ProductType.FACE_CREAM));
        Subject dried = new Subject(subject.brief(), subject.portions(), subject.phases(), 0.1, subject.measuredPh());
        Evaluation judged = Bench.EVALUATOR.evaluate(dried, book, Bench.TODAY);
        assertThat(judged.composition()
                        .share("glycerin")
                        .orElseThrow()
                        .inThePot()
                        .nominal())
                .isEqualTo(0.2 / 0.9, within(1e-12));
        assertThat(judged.figures().waterPercent().value()).isEqualTo((79.2 - 10) / 0.9, within(1e-6));
        assertThat(judged.composition()
                        .share("glycerin")
                        .orElseThrow()
                        .asAdded()
                        .nominal())
                .isEqualTo(0.2);
    }

    @Test
    void boostersAreNotCountedAsPreservatives() {
        Evaluation judged =
                book.judge(ProductType.FACE_CREAM, "water", "q.s.", "glycerin", "5", "ethylhexylglycerin", "0.5");
        assertThat(Bench.warnings(judged)).containsExactly("preservation.missing");
        assertThat(judged.warnings().get(0).says()).contains("not counted");
    }

    @Test
    void chargesAndEmulsifiers() {
        assertThat(Bench.warnings(book.judge(
                        ProductType.SHAMPOO,
                        "water",
                        "q.s.",
                        "sles-70",
                        "15",
                        "behentrimonium-chloride",
                        "2",
                        "phenoxyethanol",
                        "0.8")))
                .containsExactly("charge.anionic-cationic");
        assertThat(Bench.warnings(book.judge(
                        ProductType.BODY_LOTION,
                        "water",
                        "q.s.",
                        "helianthus-annuus-seed-oil",
                        "10",
                        "phenoxyethanol",
                        "0.8")))
                .containsExactly("emulsion.no-emulsifier");
    }

    /** A card without a composition may be the very thing that is missed: it is named, and the finding is no warning. */
    @Test
    void whatIsMissedMayBeWhatIsNotKnown() {
        book.card("blend, of a friend", Family.OTHER);
        Evaluation judged = book.judge(
                ProductType.BODY_LOTION,
                "water",
                "q.s.",
                "helianthus-annuus-seed-oil",
                "10",
                "blend, of a friend",
                "4");
        assertThat(Bench.warnings(judged)).isEmpty();
        assertThat(Bench.finding(judged, "emulsion.no-emulsifier").orElseThrow().says())
                .endsWith("without an emulsifier, as far as is known (no composition for blend, of a friend).");
        assertThat(Bench.finding(judged, "preservation.missing").orElseThrow().says())
                .contains("as far as is known (no composition for blend, of a friend).");
    }

    @Test
    void orderOfAdditionNamesBothLines() {
        Evaluation judged =
                book.judge(ProductType.TONER, "water", "q.s.", "citric-acid", "0.2", "sodium-benzoate", "0.5");
        Finding order = Bench.finding(judged, "order.benzoate-before-acid").orElseThrow();
        assertThat(order.lines()).containsExactly("line3", "line2");
        assertThat(Bench.warnings(
                        book.judge(ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.5", "citric-acid", "0.2")))
                .isEmpty();
    }
}
