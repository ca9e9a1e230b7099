package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
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
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.FragranceCertificate.MaximumUse;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** A perfume against what its certificate allows; all figures invented. */
class FragranceCertificateTest {
    private final Bench book = Bench.book();

    @BeforeEach
    void perfume() {
        book.substance("parfum", Bench.UNKNOWN, ChargeClass.NONE, false, Optional.empty(), "fragrance");
        book.card("scent", Family.FRAGRANCE, Constituent.exactly("parfum", 1));
    }

    private void certified(LocalDate day, Optional<Double> furocoumarins) {
        book.certificate(
                "scent",
                new FragranceCertificate(
                        day,
                        "an edition",
                        List.of(
                                new MaximumUse(
                                        "5A", Set.of(ProductType.BODY_LOTION, ProductType.BODY_OIL), Percent.of("0.8")),
                                new MaximumUse("4", Set.of(ProductType.FINE_FRAGRANCE), Percent.of("20"))),
                        furocoumarins));
    }

    private Evaluation oil(ProductType type, String percent) {
        return book.judge(type, "helianthus-annuus-seed-oil", "q.s.", "scent", percent);
    }

    @Test
    void withoutACertificateNothingIsSaidOfTheHighestUse() {
        Finding open = Bench.finding(oil(ProductType.BODY_OIL, "0.5"), "fragrance.no-certificate")
                .orElseThrow();
        assertThat(open.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
        assertThat(open.says()).contains("scent");
    }

    @Test
    void theCategoryOfTheProductDecides() {
        certified(LocalDate.of(2026, 5, 1), Optional.empty());
        assertThat(Bench.warnings(oil(ProductType.BODY_OIL, "0.8"))).isEmpty();
        Evaluation above = oil(ProductType.BODY_OIL, "0.9");
        assertThat(Bench.warnings(above)).containsExactly("fragrance.maximum");
        Finding finding = Bench.finding(above, "fragrance.maximum").orElseThrow();
        assertThat(finding.says()).contains("0.9 %").contains("0.8 %").contains("5A");
        assertThat(finding.source()).contains("2026-05-01").contains("an edition");
        assertThat(Bench.finding(oil(ProductType.LIP_PRODUCT, "0.1"), "fragrance.category")
                        .orElseThrow()
                        .kind())
                .isEqualTo(Finding.Kind.CANNOT_JUDGE);
    }

    @Test
    void theUpperEndOfARangeDecidesAndAllLinesAndPremixesCount() {
        certified(LocalDate.of(2026, 5, 1), Optional.empty());
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "A",
                List.of(
                        new Line("o", "helianthus-annuus-seed-oil", new Amount.ToHundred(), ""),
                        new Line(
                                "s",
                                "scent",
                                new Amount.ToReading(
                                        ReadingKind.ODOUR, Percent.of("0.6"), PercentRange.of("0.4", "0.9")),
                                "")),
                List.of())));
        Evaluation judged =
                Bench.EVALUATOR.evaluate(Subjects.of(formula, Brief.of(ProductType.BODY_OIL)), book, Bench.TODAY);
        assertThat(Bench.finding(judged, "fragrance.maximum").orElseThrow().says())
                .contains("up to 0.9 %")
                .contains("upper end");
        book.mixture("premix", Family.FRAGRANCE, "material:scent", 0.5, "helianthus-annuus-seed-oil", 0.5);
        Evaluation twice =
                book.judge(ProductType.BODY_OIL, "helianthus-annuus-seed-oil", "q.s.", "scent", "0.5", "premix", "0.8");
        assertThat(Bench.finding(twice, "fragrance.maximum").orElseThrow().lines())
                .hasSize(2);
    }

    @Test
    void anOldCertificateIsAskedForAgain() {
        certified(LocalDate.of(2023, 5, 1), Optional.empty());
        assertThat(Bench.finding(oil(ProductType.BODY_OIL, "0.5"), "fragrance.old-certificate"))
                .isPresent();
        certified(LocalDate.of(2025, 5, 1), Optional.empty());
        assertThat(Bench.finding(oil(ProductType.BODY_OIL, "0.5"), "fragrance.old-certificate"))
                .isEmpty();
    }

    /** Annex II, entry 358: below 1 mg/kg in sun protection and bronzing products, natural content included. */
    @Test
    void furocoumarinsAreACautionOnSkinAndABreachUnderASunClaim() {
        certified(LocalDate.of(2026, 5, 1), Optional.of(500.0));
        assertThat(Bench.finding(oil(ProductType.BODY_OIL, "0.1"), "fragrance.furocoumarins"))
                .as("0.1 % of 500 mg/kg is 0.5 mg/kg")
                .isEmpty();
        assertThat(Bench.finding(oil(ProductType.BODY_OIL, "0.5"), "fragrance.furocoumarins")
                        .orElseThrow()
                        .kind())
                .isEqualTo(Finding.Kind.LOOK_AT_THIS);
        assertThat(Bench.finding(oil(ProductType.SHOWER_GEL, "0.5"), "fragrance.furocoumarins"))
                .isEmpty();
        Brief sun = new Brief(
                ProductType.BODY_OIL,
                EnumSet.of(Brief.People.ADULTS),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of("SPF 6"),
                "",
                "EU");
        Evaluation judged = book.judge(sun, Bench.TODAY, "helianthus-annuus-seed-oil", "q.s.", "scent", "0.5");
        assertThat(Bench.finding(judged, "fragrance.furocoumarins")
                        .orElseThrow()
                        .kind())
                .isEqualTo(Finding.Kind.BREACH);
    }
}
