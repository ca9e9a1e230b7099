package stillroom.formulary.reformulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.science.blend.Patience;

/** Small shelves on which each answer can be reckoned on a slip of paper. */
class ByHandTest {
    private static final double WRITTEN = 6e-4;

    private static Line line(String id, String key, String percent) {
        return new Line(id, key, Amount.fixed(percent), "");
    }

    private static Recast recast(Line... lines) {
        Recast lotion = Lotion.recast();
        return new Recast(
                new Formula(List.of(new Phase("a", "All", List.of(lines), List.of()))),
                lotion.brief(),
                lotion.book(),
                lotion.prices(),
                lotion.evaluator(),
                lotion.asOf());
    }

    private static Answer first(Recast recast, Shelf shelf, Wish wish) {
        Answer first = new Reformulation(recast, shelf, Patience.ENDLESS)
                .solve(wish)
                .answers()
                .get(0);
        assertThat(first.disagreements()).isEmpty();
        return first;
    }

    private static Shelf shelf(String... keys) {
        Map<String, Double> onHand = new java.util.HashMap<>();
        List.of(keys).forEach(key -> onHand.put(key, 1000.0));
        return new Shelf(onHand, OptionalDouble.empty());
    }

    private static double after(Answer answer, String key) {
        return answer.changes().stream()
                .filter(change -> change.materialKey().equals(key))
                .mapToDouble(Answer.Change::after)
                .sum();
    }

    private static double natural(Evaluation evaluation) {
        return evaluation.figures().others().stream()
                .filter(figure -> figure.name().equals("Natural origin"))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /**
     * Mineral oil 20 % (index 0), sunflower oil 80 % (index 1) as q.s.: natural origin 80 %. Only the two are there, so that the most
     * natural takes mineral oil out; the index must reach 100.
     */
    @Test
    void theMostNaturalByIso16128() {
        Recast oils =
                recast(new Line("s", "sunflower-oil", new Amount.ToHundred(), ""), line("m", "mineral-oil", "20"));
        Answer most = first(oils, shelf(), Wish.of(Goal.MOST_NATURAL));
        assertThat(Measure.NATURAL.of(most)).isCloseTo(100, within(WRITTEN));
        assertThat(after(most, "mineral-oil")).isZero();
    }

    /**
     * Sunflower oil 70 % (index 1), mineral oil 10 % (0), isopropyl myristate 20 % (none on its card): 70 % is guaranteed and 90 %
     * possible. Nothing else is there, so the most that is guaranteed is sunflower oil alone, and 75 % leave 25 % to the other two.
     */
    @Test
    void anUnknownIndexLiesBetweenNothingAndAll() {
        Recast oils = recast(
                new Line("s", "sunflower-oil", new Amount.ToHundred(), ""),
                line("m", "mineral-oil", "10"),
                line("i", "isopropyl-myristate", "20"));
        Bands free = Bands.USUAL.withOwn(Requirements.REQUIRED_HLB, 20);
        Answer most = first(oils, shelf(), Wish.of(Goal.MOST_NATURAL).with(free));
        assertThat(most.originBefore().guaranteed()).isCloseTo(70, within(1e-9));
        assertThat(most.originBefore().atMost()).isCloseTo(90, within(1e-9));
        assertThat(most.originBefore().unknown())
                .containsExactly(new Origin.Unknown("isopropyl-myristate", name("isopropyl-myristate"), 20));
        assertThat(most.origin()).isEqualTo(new Origin(100, 100, List.of()));
        Answer atLeast = first(oils, shelf(), Wish.of(Goal.LEAST_CHANGE).with(free.withNatural(75)));
        assertThat(atLeast.origin().guaranteed()).isCloseTo(75, within(WRITTEN));
        assertThat(after(atLeast, "mineral-oil") + after(atLeast, "isopropyl-myristate"))
                .isCloseTo(25, within(WRITTEN));
    }

    private static String name(String key) {
        return Lotion.BOOK.material(key).orElseThrow().name();
    }

    /** At least 90 % natural of the same: 10 points of mineral oil become sunflower oil, a sum of changes of 20 %. */
    @Test
    void aLeastNaturalOriginIsReachedByTheLeastChange() {
        Recast oils =
                recast(new Line("s", "sunflower-oil", new Amount.ToHundred(), ""), line("m", "mineral-oil", "20"));
        Answer enough = first(oils, shelf(), Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withNatural(90)));
        assertThat(after(enough, "mineral-oil")).isCloseTo(10, within(WRITTEN));
        assertThat(natural(enough.evaluation())).isCloseTo(90, within(WRITTEN));
        assertThat(Measure.CHANGE.of(enough)).isCloseTo(20, within(2 * WRITTEN));
        assertThat(enough.prices()).containsExactly("Each 0.1 % more of natural origin adds 0.20 % to the changes.");
    }

    /**
     * Polysorbate 60 (HLB 14.9) 1.6 % and sorbitan stearate (4.7) 2.4 %, by Griffin's mean 8.78 where both are whole. With
     * steareth-21 (15.5) in place of the first, as much HLB is (15.5 x + 4.7 (4 - x)) / 4, so x = 4 (HLB - 4.7) / 10.8.
     */
    @Test
    void theHlbStaysWithAnotherEmulsifier() {
        Recast lotion = Lotion.recast();
        Answer answer = first(lotion, shelf("steareth-21"), Wish.without("polysorbate-60"));
        double hlb = answer.figures().stream()
                .filter(figure -> figure.name().equals(Requirements.HLB))
                .findFirst()
                .orElseThrow()
                .before();
        double steareth = after(answer, "steareth-21");
        double sorbitan = after(answer, "sorbitan-stearate");
        assertThat((15.5 * steareth + 4.7 * sorbitan) / (steareth + sorbitan)).isCloseTo(hlb, within(0.01));
        assertThat(steareth / (steareth + sorbitan)).isCloseTo((hlb - 4.7) / 10.8, within(0.001));
    }

    /**
     * The lotion's oils, sunflower 8 % (7) and caprylic/capric triglyceride 5 % (8), require 96 / 13 = 7.385; its emulsifiers are at
     * (14.9 p + 4.7 s) / (p + s), p = 0.98 * 1.6, s = 2.4: 8.731, so 1.346 off. For 1 off, 8.385, from polysorbate to sorbitan
     * stearate goes y with 0.98 (1.6 - y) (14.9 - 8.385) = (2.4 + y) (8.385 - 4.7): y = 0.136 %. To move oils instead takes
     * 13 % of change for each unit, the swap 0.8.
     */
    @Test
    void theHlbComesNearToWhatTheOilsRequire() {
        Wish near = Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withOwn(Requirements.AGAINST, 1));
        Answer answer = first(Lotion.recast(), shelf(), near);
        assertThat(answer.proven()).isTrue();
        double hundredthOfAUnit = 0.004;
        assertThat(after(answer, "polysorbate-60")).isCloseTo(1.6 - 0.136, within(hundredthOfAUnit));
        assertThat(after(answer, "sorbitan-stearate")).isCloseTo(2.4 + 0.136, within(hundredthOfAUnit));
        assertThat(Measure.CHANGE.of(answer)).isCloseTo(2 * 0.136, within(2 * hundredthOfAUnit));
    }

    /** Steareth-2 (4.9) in place of polysorbate; 7 is the least that these oils can require, so no formula is less than 2.1 off. */
    @Test
    void anHlbTooFarOffTheOilsSaysByHowMuch() {
        Bands wide = Bands.USUAL.withOwn(Requirements.HLB, 20).withOwn(Requirements.REQUIRED_HLB, 20);
        Reformulation work = new Reformulation(Lotion.recast(), shelf("steareth-2"), Patience.ENDLESS);
        Result result = work.solve(Wish.without("polysorbate-60").with(wide));
        assertThat(result.answers()).isEmpty();
        assertThat(result.conflict())
                .contains("HLB of the emulsifiers at most 2 off what the oils require", "Polysorbate 60 is to go");
        assertThat(result.reliefs()).hasSize(1);
        assertThat(result.reliefs().get(0).words())
                .matches("Allow an HLB up to 2\\.1\\d? off what the oils require\\.");
        assertThat(work.solve(result.reliefs().get(0).wish()).answers()).isNotEmpty();
    }

    /** Only castor oil (required 14) is there for sunflower oil (7): the mean would leave its band, and the way out is named. */
    @Test
    void anHlbThatCannotBeKeptSaysByHowMuch() {
        Recast lotion = Lotion.recast();
        Wish wish = Wish.without("polysorbate-60");
        Shelf bare = shelf("steareth-2");
        Result result = new Reformulation(lotion, bare, Patience.ENDLESS).solve(wish);
        assertThat(result.answers()).isEmpty();
        assertThat(result.conflict()).anyMatch(words -> words.startsWith(Requirements.HLB + " at least"));
        Relief hlb = result.reliefs().stream()
                .filter(relief -> relief.words().startsWith("Allow HLB"))
                .findFirst()
                .orElseThrow();
        // Steareth-2 alone (4.9) reaches furthest; the oils require 7 at least (sunflower alone), 2.1 more.
        assertThat(hlb.words())
                .matches(
                        "Allow HLB of the emulsifiers at least 4\\.[89]\\d?, and an HLB up to 2\\.1\\d? off what the oils"
                                + " require\\.");
        assertThat(new Reformulation(lotion, bare, Patience.ENDLESS)
                        .solve(hlb.wish())
                        .answers())
                .isNotEmpty();
    }

    /** 8 % of a 99.5 % glycerin, of which no more than 50 g are there for 1,000 g, and 86 % glycerin beside it. */
    @Test
    void aLotTooSmallIsFilledUpFromAnother() {
        Recast wet = recast(new Line("w", "water-purified", new Amount.ToHundred(), ""), line("g", "glycerin-99", "8"));
        Shelf shelf = new Shelf(
                Map.of("water-purified", 1e6, "glycerin-99", 50.0, "glycerin-86", 1000.0), OptionalDouble.of(1000));
        Wish wish = new Wish(Goal.LEAST_CHANGE, Bands.USUAL, Set.of(), Set.of(), OptionalInt.empty(), 1);
        Answer answer = first(wet, shelf, wish);
        assertThat(after(answer, "glycerin-99")).isCloseTo(5, within(WRITTEN));
        assertThat(after(answer, "glycerin-86")).isCloseTo(3, within(WRITTEN));
        assertThat(answer.enoughFor()).isCloseTo(1000, within(0.2));
    }
}
