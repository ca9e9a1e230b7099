package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Change;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Organisms;

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
        // Measured in soya oil (JSCC 23 (1972), table VII, read): 0.2 / (0.798 + 7.5 × 0.2), by hand.
        assertThat(withOil).isEqualTo(0.0870, within(0.0005));
    }

    private double free(String... pairs) {
        return state(pairs).freePercent().high();
    }

    private PreservativeState state(String... pairs) {
        return book.judge(at(5.5), Bench.TODAY, pairs).preservation().get(0);
    }

    /** An oil of which only the octanol figure is known: the loss lies between none and that, and the low end counts. */
    @Test
    void anOilWithoutAMeasuredFigureWidensTheFreeShare() {
        PreservativeState state = state("water", "q.s.", "methylparaben", "0.2", "ester-oil", "20");
        // P = 10^1.96 = 91: 0.2 / (0.798 + 91.2 × 0.2), by hand.
        assertThat(state.freePercent().low()).isEqualTo(0.0105, within(0.0002));
        // None of it in the oil: 0.99787 × 0.2 / 0.798.
        assertThat(state.freePercent().high()).isEqualTo(0.2501, within(0.0001));
        assertThat(state.freeIsAtMost()).isFalse();
    }

    /** 5 % polysorbate 80: 22 % of methylparaben stay free (Patel and Kostenbauder 1958, from memory). */
    @Test
    void micellesHoldParabens() {
        PreservativeState state = state("water", "q.s.", "methylparaben", "0.2", "polysorbate-80", "5");
        double held = state.inMicellesPercent().match(Interval::middle, because -> Double.NaN);
        assertThat(held).isEqualTo(78, within(4.0));
        assertThat(state.freePercent().low()).isLessThan(0.06);
        assertThat(state.freeIsAtMost()).isFalse();
        assertThat(Bench.finding(
                        book.judge(
                                at(5.5), Bench.TODAY, "water", "q.s.", "methylparaben", "0.2", "polysorbate-80", "5"),
                        "preservation.losses"))
                .isEmpty();
    }

    @Test
    void anUnknownMicelleIsSaidAndLeavesOnlyAnUpperEnd() {
        Evaluation judged =
                book.judge(at(4.5), Bench.TODAY, "water", "q.s.", "sodium-benzoate", "0.5", "coco-glucoside-51", "10");
        PreservativeState benzoic = judged.preservation().get(0);
        assertThat(benzoic.freeIsAtMost()).isTrue();
        assertThat(benzoic.freePercent().low()).isZero();
        assertThat(benzoic.freePercent().high()).isGreaterThan(0.1);
        assertThat(benzoic.against())
                .extracting(PreservativeState.Inhibition::standing)
                .contains(PreservativeState.Standing.NOT_KNOWN)
                .doesNotContain(PreservativeState.Standing.AMONG, PreservativeState.Standing.ABOVE_ALL);
        Finding open = Bench.finding(judged, "preservation.losses").orElseThrow();
        assertThat(open.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
        assertThat(open.says()).contains("coco-glucoside");
    }

    @Test
    void withoutAPhItSaysThatNothingCanBeSaid() {
        Evaluation judged = book.judge(
                Brief.of(ProductType.TONER), Bench.TODAY, "water", "q.s.", "sodium-benzoate", "0.4", "no-card", "3");
        assertThat(Bench.finding(judged, "preservation.ph").orElseThrow().kind())
                .isEqualTo(Finding.Kind.CANNOT_JUDGE);
    }

    /** Benzoic acid over pH: 61.532 % at 4 and 13.790 % at 5 (recomputed), falling all along the curve. */
    @Test
    void theCurveFallsAsTheTableOfUndissociatedSharesDoes() {
        Preserving all = Bench.EVALUATOR.preserving(
                Subjects.of(Bench.formula("water", "q.s.", "sodium-benzoate", "0.5", "glycerin", "30"), at(4.5)),
                book,
                Bench.TODAY,
                new Interval(3, 8),
                0.25);
        assertThat(all.curve()).hasSize(21);
        List<Double> shares = all.curve().stream()
                .map(point -> point.states().get(0).undissociatedPercent().high())
                .toList();
        assertThat(shares.get(4)).isEqualTo(61.532, within(0.001));
        assertThat(shares.get(8)).isEqualTo(13.790, within(0.001));
        assertThat(shares).isSortedAccordingTo(Comparator.reverseOrder());
        // 30 % glycerol: 0.916; below what Escherichia (0.95) has been seen to need, not below what moulds need.
        assertThat(all.growth())
                .filteredOn(row -> row.group() == Organisms.GRAM_NEGATIVE)
                .extracting(Preserving.Growth::standing)
                .containsExactly(Preserving.Standing.HURDLE);
        assertThat(all.growth())
                .filteredOn(row -> row.group() == Organisms.MOULD)
                .extracting(Preserving.Growth::standing)
                .containsExactly(Preserving.Standing.ALL_GROW);
    }

    @Test
    void theSaltOfAParabenActsAsThatParaben() {
        PreservativeState state = book.judge(at(5), Bench.TODAY, "water", "q.s.", "sodium-methylparaben", "0.2")
                .preservation()
                .get(0);
        assertThat(state.substance()).isEqualTo("methylparaben");
        // 152.149 / 174.131, IUPAC 2021.
        assertThat(state.totalPercent()).isEqualTo(0.2 * 0.87376, within(1e-4));
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
        assertThat(change.appeared())
                .extracting(Finding::rule)
                .containsExactly("eu-annex-iii-376", "law.label-warning");
        assertThat(change.gone()).extracting(Finding::kind).containsExactly(Finding.Kind.LOOK_AT_THIS);
        assertThat(Change.between(after, after).isEmpty()).isTrue();
    }
}
