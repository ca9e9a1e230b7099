package stillroom.formulary.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillroom.formulary.change.LawChange.RowTurn;
import stillroom.formulary.change.LawChange.Turn;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** Real amendments of Regulation (EC) No 1223/2009 between the two days that they turn on; days as the rule tables cite them. */
class LawComparisonTest {
    private static final MaterialBook LIBRARY = StarterLibrary.load();
    private static final LawComparison COMPARISON = new LawComparison(Bench.EVALUATOR);

    private static LawChange change(ProductType type, String from, String to, String... pairs) {
        return COMPARISON.between(
                Subjects.of(Bench.formula(pairs), Brief.of(type)),
                LIBRARY,
                LabelInput.named("Test"),
                LocalDate.parse(from),
                LocalDate.parse(to));
    }

    private static List<String> turns(LawChange change, Turn turn) {
        return change.rows().stream()
                .filter(row -> row.turn() == turn)
                .map(row -> row.day() + " " + row.amendedBy())
                .distinct()
                .collect(Collectors.toList());
    }

    /** (EU) 2023/1545: placed until 31 July 2026, made available until 31 July 2028. */
    @Test
    void allergensOfTheExtensionComeOntoTheLabelAndOldStockRunsOut() {
        LawChange begins = change(
                ProductType.BODY_OIL, "2026-07-31", "2026-08-01", "sunflower-oil", "q.s.", "lavender-oil", "0.5");
        assertThat(begins.label().namesAdded()).contains("Linalyl Acetate");
        assertThat(begins.label().namesGone()).isEmpty();
        assertThat(turns(begins, Turn.BEGINS)).containsExactly("2026-08-01 (EU) 2023/1545");
        LawChange stock = change(
                ProductType.BODY_OIL, "2028-07-31", "2028-08-01", "sunflower-oil", "q.s.", "lavender-oil", "0.5");
        assertThat(stock.label().isEmpty()).isTrue();
        assertThat(stock.appeared()).isEmpty();
        assertThat(turns(stock, Turn.STOCK_ENDS)).containsExactly("2028-08-01 (EU) 2023/1545");
    }

    /** (EU) 2024/996: not placed from 1 November 2025, not made available from 1 May 2027. */
    @Test
    void retinolBecomesABreachAndBringsItsWarning() {
        String[] cream = {
            "water-purified", "q.s.", "retinol-in-oil", "4", "emulsifying-wax", "5", "phenoxyethanol", "0.9"
        };
        LawChange change = change(ProductType.FACE_CREAM, "2025-10-31", "2025-11-01", cream);
        assertThat(change.reweighed()).anySatisfy(both -> {
            assertThat(both.before().rule()).isEqualTo("eu-annex-iii-376.b");
            assertThat(both.before().kind()).isEqualTo(Finding.Kind.LOOK_AT_THIS);
            assertThat(both.before().says()).startsWith("From 2025-11-01:");
            assertThat(both.after().kind()).isEqualTo(Finding.Kind.BREACH);
            assertThat(both.isWorse()).isTrue();
        });
        assertThat(change.label().warningsAdded())
                .containsExactly("Contains Vitamin A. Consider your daily intake before use");
        assertThat(turns(change(ProductType.FACE_CREAM, "2027-04-30", "2027-05-01", cream), Turn.STOCK_ENDS))
                .containsExactly("2027-05-01 (EU) 2024/996");
    }

    /** (EU) 2026/78: hexyl salicylate, from 1 May 2026. */
    @Test
    void aRowWithoutForewarningAppears() {
        LawChange change = change(ProductType.BODY_OIL, "2024-01-01", "2026-05-01", "sunflower-oil", "q.s.");
        assertThat(change.isEmpty()).isTrue();
        MaterialBook book =
                Bench.book().pure("hexyl-salicylate", stillroom.formulary.material.Family.FRAGRANCE, 222.284);
        LawChange hexyl = COMPARISON.between(
                Subjects.of(
                        Bench.formula("helianthus-annuus-seed-oil", "q.s.", "hexyl-salicylate", "0.5"),
                        Brief.of(ProductType.BODY_OIL)),
                book,
                LabelInput.named("Test"),
                LocalDate.of(2024, 1, 1),
                LocalDate.of(2026, 5, 1));
        assertThat(hexyl.appeared().stream().map(Finding::rule)).contains("eu-annex-iii-380.c");
        assertThat(turns(hexyl, Turn.BEGINS)).contains("2026-05-01 (EU) 2026/78");
        RowTurn turn = hexyl.rows().get(0);
        assertThat(turn.source()).contains("entry 380");
        assertThat(turn.substances()).containsExactly("hexyl-salicylate");
    }

    /** (EU) 2022/1181: the words change, older stock until 31 July 2026; the rows are from memory. */
    @Test
    void theWordsOnReleasedFormaldehydeChange() {
        LawChange change = change(
                ProductType.SHAMPOO,
                "2024-07-31",
                "2024-08-01",
                "water-purified",
                "q.s.",
                "sles-27",
                "35",
                "imidazolidinyl-urea",
                "0.3");
        assertThat(change.label().warningsAdded()).containsExactly("releases formaldehyde");
        assertThat(change.label().warningsGone()).containsExactly("Contains formaldehyde");
        assertThat(turns(change, Turn.ENDS)).hasSize(1);
        assertThat(turns(change, Turn.BEGINS)).containsExactly("2024-08-01 (EU) 2022/1181");
    }

    /** (EU) 2026/909: citral, from 1 January 2027. */
    @Test
    void aComingLimitIsALookBeforeItsDayAndABreachAfter() {
        LawChange change = change(
                ProductType.LIP_PRODUCT, "2026-12-31", "2027-01-01", "castor-oil", "q.s.", "lemongrass-oil", "0.5");
        assertThat(change.reweighed().stream().map(both -> both.after().rule())).contains("eu-annex-iii-70");
        assertThat(change.gone()).isEmpty();
    }

    @Test
    void daysInTheWrongOrderAreRefused() {
        assertThatThrownBy(() -> change(ProductType.BALM, "2026-02-01", "2026-01-01", "shea-butter", "100"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2026-01-01");
    }
}
