package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Change;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Interval;

class PreservationTest {
    private final Bench book = Bench.book();

    private static Brief at(double ph) {
        return new Brief(
                ProductType.TONER,
                Set.of(Brief.People.ADULTS),
                "",
                "",
                Optional.of(Interval.point(ph)),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "EU");
    }

    /** 0.3 % potassium sorbate at pH 4 leaves 0.19 % free sorbic acid against 0.16 % soluble: a worked case, computed. */
    @Test
    void freeSorbicAcidMayCrystallise() {
        Evaluation judged = book.judge(at(4), Bench.TODAY, "water", "q.s.", "potassium-sorbate", "0.3");
        PreservativeState sorbic = judged.preservation().get(0);
        assertThat(sorbic.totalPercent()).isEqualTo(0.3 * 0.74644, within(1e-4));
        assertThat(sorbic.freePercent().high()).isEqualTo(0.191, within(0.001));
        assertThat(sorbic.mayCrystallise()).isTrue();
        assertThat(Bench.finding(judged, "solubility.free-acid").orElseThrow().kind())
                .isEqualTo(Finding.Kind.LOOK_AT_THIS);
        assertThat(book.judge(at(5), Bench.TODAY, "water", "q.s.", "potassium-sorbate", "0.3")
                        .preservation()
                        .get(0)
                        .mayCrystallise())
                .isFalse();
    }

    @Test
    void oilTakesAPreservativeOutOfTheWater() {
        double inWater = free("water", "q.s.", "methylparaben", "0.2");
        double withOil = free("water", "q.s.", "methylparaben", "0.2", "helianthus-annuus-seed-oil", "20");
        assertThat(inWater).isEqualTo(0.2004, within(0.001));
        // P = 10^1.96 = 91: 0.2 / (0.798 + 91.2 × 0.2), by hand.
        assertThat(withOil).isEqualTo(0.0105, within(0.0002));
    }

    private double free(String... pairs) {
        return book.judge(at(5.5), Bench.TODAY, pairs)
                .preservation()
                .get(0)
                .freePercent()
                .high();
    }

    @Test
    void gapsAreNamedByGroupAndNeverCalledSufficient() {
        Evaluation judged = book.judge(at(4.5), Bench.TODAY, "water", "q.s.", "sodium-benzoate", "0.4");
        Finding gap = Bench.finding(judged, "preservation.gap").orElseThrow();
        assertThat(gap.says())
                .contains("Gram-negative")
                .doesNotContain("yeasts")
                .doesNotContainIgnoringCase("suffic");
        assertThat(gap.kind()).isEqualTo(Finding.Kind.LOOK_AT_THIS);
    }

    @Test
    void twoDatesShowWhatChanges() {
        String[] lotion = {"water", "q.s.", "phenoxyethanol", "0.8", "retinyl-palmitate", "0.2"};
        Brief brief = Brief.of(ProductType.BODY_LOTION);
        Evaluation before = book.judge(brief, LocalDate.of(2025, 6, 1), lotion);
        Evaluation after = book.judge(brief, Bench.TODAY, lotion);
        Change change = Change.between(before, after);
        assertThat(change.appeared()).extracting(Finding::kind).containsExactly(Finding.Kind.BREACH);
        assertThat(change.gone()).extracting(Finding::kind).containsExactly(Finding.Kind.LOOK_AT_THIS);
        assertThat(Change.between(after, after).isEmpty()).isTrue();
    }
}
