package stillroom.formulary.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;

/**
 * Ingredient lists. Order and thresholds: Regulation (EC) No 1223/2009, article 19(1)(g), from memory, and the allergen
 * entries of Annex III, read; United States: 21 CFR 701.3, (a) read, (f) from memory.
 */
class LabelsTest {
    private final Labels labels = new Labels(Bench.EVALUATOR.rules());
    private final Bench book = Bench.book();

    @BeforeEach
    void addPerfumesAndColours() {
        book.pure("parfum", Family.FRAGRANCE, Bench.UNKNOWN, "fragrance");
        book.pure("linalool", Family.FRAGRANCE, 154.25);
        book.pure("coumarin", Family.FRAGRANCE, 146.14);
        book.pure("ci-77491", Family.COLOURANT, Bench.UNKNOWN, "colourant");
        book.card(
                "perfume",
                Family.FRAGRANCE,
                part("parfum", 0.878, Constituent.Role.INGREDIENT),
                part("linalool", 0.12, Constituent.Role.FRAGRANCE_PART),
                part("coumarin", 0.002, Constituent.Role.FRAGRANCE_PART));
    }

    private static Constituent part(String substance, double share, Constituent.Role role) {
        return new Constituent(substance, MassFraction.exactly(share), role);
    }

    private static Brief brief(ProductType type, String market) {
        return new Brief(
                type,
                Set.of(Brief.People.ADULTS),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                market);
    }

    private Label label(ProductType type, String market, String... pairs) {
        return labels.of(
                Subjects.of(Bench.formula(pairs), brief(type, market)), book, LabelInput.named("x"), Bench.TODAY);
    }

    private static LabelEntry entry(Label label, String name) {
        return label.ingredients().stream()
                .filter(entry -> entry.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void waterOfAllMaterialsCountsAndImpuritiesStayOff() {
        Label label = label(
                ProductType.HAND_WASH,
                "EU",
                "water",
                "40",
                "sles-70",
                "30",
                "capb-30",
                "15",
                "glycerin",
                "14.2",
                "phenoxyethanol",
                "0.8");
        // 40 + 9 + 9.675 water; sodium chloride of the betaine is an impurity of its making.
        assertThat(label.ingredientText())
                .isEqualTo("Ingredients: water, sodium-laureth-sulfate, glycerin, cocamidopropyl-betaine,"
                        + " phenoxyethanol");
        assertThat(entry(label, "water").share().nominal())
                .isCloseTo(0.58675, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void exactlyOnePercentIsOrderedInTheUnionAndFreeInTheUnitedStates() {
        String[] pairs = {"water", "q.s.", "glycerin", "1.00", "phenoxyethanol", "0.99"};
        assertThat(entry(label(ProductType.TONER, "EU", pairs), "glycerin").block())
                .isEqualTo(LabelEntry.Block.ORDERED);
        assertThat(entry(label(ProductType.TONER, "EU", pairs), "phenoxyethanol")
                        .block())
                .isEqualTo(LabelEntry.Block.FREE);
        assertThat(entry(label(ProductType.TONER, "US", pairs), "glycerin").block())
                .isEqualTo(LabelEntry.Block.FREE);
    }

    @Test
    void colourantsComeLastWhateverTheirShareWithTheirIndexNumber() {
        Label label =
                label(ProductType.BALM, "EU", "helianthus-annuus-seed-oil", "96.5", "ci-77491", "3", "perfume", "0.5");
        assertThat(label.ingredients().get(label.ingredients().size() - 1).name())
                .isEqualTo("CI 77491");
    }

    @Test
    void aListThatLacksAMaterialSaysSoWhereverItIsPasted() {
        book.card("scent", Family.FRAGRANCE);
        Label label = label(ProductType.BODY_LOTION, "EU", "water", "q.s.", "glycerin", "5", "scent", "0.3");
        assertThat(label.unlisted()).containsExactly("scent");
        assertThat(label.ingredientText()).endsWith(" [NOT COMPLETE, without scent]");
        assertThat(label(ProductType.BODY_LOTION, "EU", "water", "q.s.", "glycerin", "5")
                        .ingredientText())
                .doesNotContain("[");
    }

    /** 12 % linalool in 0.5 % perfume is 0.06 %; 0.2 % coumarin in it is 0.001 %, which is not above 0.001 %. */
    @Test
    void allergensAreNamedOnlyAboveTheThreshold() {
        String[] pairs = {"water", "q.s.", "perfume", "0.5", "coco-glucoside-51", "3", "phenoxyethanol", "0.8"};
        assertThat(label(ProductType.BODY_LOTION, "EU", pairs).allergens()).containsExactly("Linalool");
        assertThat(label(ProductType.SHAMPOO, "EU", pairs).allergens()).containsExactly("Linalool");
        String[] more = {"water", "q.s.", "perfume", "0.501", "coco-glucoside-51", "3", "phenoxyethanol", "0.8"};
        assertThat(label(ProductType.BODY_LOTION, "EU", more).allergens()).containsExactly("Linalool", "Coumarin");
        assertThat(label(ProductType.SHAMPOO, "EU", more).allergens()).containsExactly("Linalool");
    }

    @Test
    void aPerfumeIsListedWhole() {
        Label label = label(ProductType.BODY_LOTION, "EU", "water", "q.s.", "perfume", "2", "phenoxyethanol", "0.8");
        assertThat(entry(label, "parfum").share().nominal()).isEqualTo(0.02);
        assertThat(entry(label, "parfum").block()).isEqualTo(LabelEntry.Block.ORDERED);
    }

    /** Regulation (EU) 2023/1545: new products from 31 July 2026 (read). */
    @Test
    void theLongerListCountsFromItsDay() {
        book.pure("linalyl-acetate", Family.FRAGRANCE, 196.29);
        book.card(
                "herb-oil",
                Family.FRAGRANCE,
                part("parfum", 0.6, Constituent.Role.INGREDIENT),
                part("linalyl-acetate", 0.4, Constituent.Role.FRAGRANCE_PART));
        var subject = Subjects.of(
                Bench.formula("water", "q.s.", "herb-oil", "0.5", "phenoxyethanol", "0.8"),
                brief(ProductType.BODY_LOTION, "EU"));
        LabelInput input = LabelInput.named("x");
        assertThat(labels.of(subject, book, input, LocalDate.of(2026, 7, 31)).allergens())
                .isEmpty();
        assertThat(labels.of(subject, book, input, LocalDate.of(2026, 8, 1)).allergens())
                .containsExactly("Linalyl Acetate");
    }

    @Test
    void overlappingRangesAreSaid() {
        book.card(
                "blend",
                Family.OTHER,
                new Constituent("glycerin", new MassFraction(0.30, 0.45, 0.60), Constituent.Role.INGREDIENT),
                new Constituent(
                        "helianthus-annuus-seed-oil", new MassFraction(0.40, 0.55, 0.70), Constituent.Role.INGREDIENT));
        Label label = label(ProductType.BALM, "EU", "blend", "100");
        assertThat(label.findings()).extracting(Finding::rule).contains("label.order-open");
    }

    @Test
    void retinolBringsItsWarningAndAMissingLanguageIsAFinding() {
        String[] pairs = {"water", "q.s.", "retinyl-palmitate", "0.05", "phenoxyethanol", "0.8"};
        Label english = label(ProductType.BODY_LOTION, "EU", pairs);
        // Regulation (EU) 2024/996 (read).
        assertThat(english.warnings())
                .extracting(LabelWarning::text)
                .containsExactly("Contains Vitamin A. Consider your daily intake before use");
        LabelInput finnish = new LabelInput("x", "", "", "", "", "fi", Optional.empty(), List.of());
        Label other = labels.of(
                Subjects.of(Bench.formula(pairs), brief(ProductType.BODY_LOTION, "EU")), book, finnish, Bench.TODAY);
        assertThat(other.findings()).extracting(Finding::rule).contains("label.warning-language");
    }

    @Test
    void noDateWithoutAReason() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Durability(Optional.empty(), Optional.of(6), " ", "A. Maker"));
        assertThat(label(ProductType.BALM, "EU", "helianthus-annuus-seed-oil", "100")
                        .findings())
                .extracting(Finding::rule)
                .contains("label.durability");
    }

    @Test
    void aBatchIsHeldWhenItsListDiffers() {
        Label printed = label(
                ProductType.TONER,
                "EU",
                "water",
                "q.s.",
                "glycerin",
                "5",
                "sodium-chloride",
                "3",
                "phenoxyethanol",
                "0.8");
        Label scattered = label(
                ProductType.TONER,
                "EU",
                "water",
                "q.s.",
                "glycerin",
                "4.98",
                "sodium-chloride",
                "3.02",
                "phenoxyethanol",
                "0.8");
        assertThat(LabelDifference.between(printed, scattered).isEmpty()).isTrue();
        Label swapped = label(
                ProductType.TONER,
                "EU",
                "water",
                "q.s.",
                "glycerin",
                "3",
                "sodium-chloride",
                "5",
                "phenoxyethanol",
                "0.8");
        assertThat(LabelDifference.between(printed, swapped).order())
                .containsExactly("sodium-chloride before glycerin");
        Label corrected = label(
                ProductType.TONER,
                "EU",
                "water",
                "q.s.",
                "glycerin",
                "5",
                "sodium-chloride",
                "3",
                "phenoxyethanol",
                "0.8",
                "citric-acid",
                "0.1");
        assertThat(LabelDifference.between(printed, corrected).missing()).containsExactly("citric-acid");
        Label perfumed = label(
                ProductType.TONER,
                "EU",
                "water",
                "q.s.",
                "glycerin",
                "5",
                "sodium-chloride",
                "3",
                "phenoxyethanol",
                "0.8",
                "perfume",
                "0.1");
        assertThat(LabelDifference.between(printed, perfumed).missing()).containsExactly("parfum", "Linalool");
    }
}
