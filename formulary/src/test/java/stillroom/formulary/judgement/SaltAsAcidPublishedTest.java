package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;

/**
 * Limits of Annex V and III on salts and esters counted as acid or alcohol. Limits: Regulation (EC) No 1223/2009 as
 * exported on 2025-11-11, read; highest percentages recomputed from IUPAC 2021 atomic weights.
 */
class SaltAsAcidPublishedTest {
    private final Bench book = Bench.book();

    @ParameterizedTest
    @CsvSource({
        "sodium-benzoate, 0.5899, 0.5902, eu-annex-v-1.b, FACE_CREAM",
        "potassium-sorbate, 0.8037, 0.8039, eu-annex-v-4, FACE_CREAM",
        "methylparaben, 0.4405, 0.4407, eu-annex-v-12, FACE_CREAM",
        "ethylparaben, 0.4811, 0.4814, eu-annex-v-12, FACE_CREAM",
        "retinyl-palmitate, 0.0916, 0.0917, eu-annex-iii-376, BODY_LOTION",
        "phenoxyethanol, 1.0, 1.0001, eu-annex-v-29, FACE_CREAM",
        "methylisothiazolinone, 0.0015, 0.001501, eu-annex-v-57, HAND_WASH"
    })
    void limitIsMetJustAtItsFigure(String material, String within, String above, String rule, ProductType type) {
        assertThat(Bench.warnings(judge(type, material, within))).doesNotContain(rule);
        Finding breach = Bench.finding(judge(type, material, above), rule).orElseThrow();
        assertThat(breach.kind()).isEqualTo(Finding.Kind.BREACH);
    }

    private Evaluation judge(ProductType type, String material, String percent) {
        return book.judge(type, "water", "q.s.", material, percent);
    }

    @Test
    void saltsOfSeparateEntriesAreNotSummed() {
        // 0.33898 + 0.15245 = 0.49143 % as benzoic acid: each entry within its own figure.
        assertThat(Bench.warnings(book.judge(
                        ProductType.FACE_CREAM,
                        "water",
                        "q.s.",
                        "sodium-benzoate",
                        "0.40",
                        "potassium-benzoate",
                        "0.20")))
                .isEmpty();
        assertThat(Bench.warnings(book.judge(
                        ProductType.FACE_CREAM, "water", "q.s.", "methylparaben", "0.30", "ethylparaben", "0.30")))
                .isEmpty();
        assertThat(Bench.warnings(book.judge(
                        ProductType.FACE_CREAM,
                        "water",
                        "q.s.",
                        "methylparaben",
                        "0.44",
                        "ethylparaben",
                        "0.48",
                        "propylparaben",
                        "0.01")))
                .containsExactly("eu-annex-v-12.b");
    }

    @Test
    void methylisothiazolinoneIsRefusedInLeaveOn() {
        assertThat(Bench.warnings(judge(ProductType.FACE_CREAM, "methylisothiazolinone", "0.001")))
                .containsExactly("eu-annex-v-57.b");
    }

    @Test
    void rulesCountFromTheirDayAndAreAnnouncedBefore() {
        String[] lotion = {"water", "q.s.", "phenoxyethanol", "0.8", "retinyl-palmitate", "0.2"};
        Brief brief = Brief.of(ProductType.BODY_LOTION);
        // Regulation (EU) 2024/996: placing on the market from 1 November 2025, read.
        Evaluation before = book.judge(brief, LocalDate.of(2025, 10, 31), lotion);
        assertThat(Bench.warnings(before)).isEmpty();
        Finding coming = Bench.finding(before, "eu-annex-iii-376").orElseThrow();
        assertThat(coming.kind()).isEqualTo(Finding.Kind.LOOK_AT_THIS);
        assertThat(coming.says()).startsWith("From 2025-11-01:").contains("until 2027-04-30");
        assertThat(Bench.warnings(book.judge(brief, LocalDate.of(2025, 11, 1), lotion)))
                .containsExactly("eu-annex-iii-376");
    }
}
