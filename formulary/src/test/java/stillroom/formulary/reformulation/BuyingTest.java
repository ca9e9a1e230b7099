package stillroom.formulary.reformulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.pot.Contents;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;
import stillroom.science.blend.Patience;

/** Where nothing on the shelf will do, the library says what to buy. */
class BuyingTest {
    private static Shelf bare() {
        Map<String, Double> onHand = ReformulationTest.handWash().lines().stream()
                .map(Line::materialKey)
                .collect(Collectors.toMap(key -> key, key -> 1000.0));
        return new Shelf(onHand, OptionalDouble.empty());
    }

    private static Result solve(Recast recast, Shelf shelf, Wish wish) {
        return new Reformulation(recast, shelf, Patience.ENDLESS).solve(wish);
    }

    @Test
    void eachThatIsNamedGivesAFormulaByItself() {
        Wish gone = Wish.without("sles-27");
        List<Bought> bought = solve(ReformulationTest.recast(), bare(), gone).bought();
        assertThat(bought).hasSizeBetween(2, 5);
        double last = 0;
        for (Bought one : bought) {
            assertThat(one.card().family()).isEqualTo(Family.SURFACTANT);
            assertThat(bare().onHand()).doesNotContainKey(one.card().key());
            assertThat(one.answer().disagreements()).isEmpty();
            assertThat(one.answer().isSetBehind()).isFalse();
            assertThat(one.changePercent()).isGreaterThanOrEqualTo(last);
            last = one.changePercent();
            Map<String, Double> more = new HashMap<>(bare().onHand());
            more.put(one.card().key(), 1000.0);
            Answer there = solve(
                            ReformulationTest.recast(),
                            new Shelf(more, OptionalDouble.empty()),
                            gone.with(Goal.LEAST_CHANGE, 1))
                    .answers()
                    .get(0);
            assertThat(there.formula()).isEqualTo(one.answer().formula());
        }
    }

    /** The same stuff, stronger: 36 % of 27 % active is 9.72 %, a tenth less at most, of a paste of 70 %. */
    @Test
    void theSameSurfactantInAnotherStrengthIsTheFirst() {
        Bought paste = solve(ReformulationTest.recast(), bare(), Wish.without("sles-27"))
                .bought()
                .get(0);
        assertThat(paste.card().key()).isEqualTo("sles-70");
        assertThat(paste.percent()).isCloseTo(9.72 / 0.7, within(1.5));
    }

    @Test
    void anUnknownPriceIsSaidAndAsksNoCost() {
        Recast known = ReformulationTest.recast();
        Set<String> lines = bare().onHand().keySet();
        Recast unpriced = new Recast(
                known.formula(),
                known.brief(),
                known.book(),
                key -> lines.contains(key) ? known.prices().price(key) : Optional.empty(),
                known.evaluator(),
                known.asOf());
        Wish cheap = new Wish(
                Goal.LOWEST_COST, Bands.USUAL.withCost(0.01), Set.of("sles-27"), Set.of(), OptionalInt.empty(), 3);
        List<Bought> bought = solve(unpriced, bare(), cheap).bought();
        assertThat(bought).isNotEmpty().noneMatch(Bought::priced);
        assertThat(solve(known, bare(), cheap).bought()).isEmpty();
    }

    @Test
    void whereSoFewWillNotDoThereAreMore() {
        Wish few = Wish.without("sles-27").atMost(OptionalInt.of(4));
        Bought best = solve(ReformulationTest.recast(), bare(), few).bought().get(0);
        assertThat(best.answer().formula().lines()).hasSizeGreaterThan(4);
    }

    @Test
    void withoutTimeTheNearestAreNamed() {
        Recast wash = ReformulationTest.recast();
        Buying.Found found =
                new Buying(wash, bare(), Wish.without("sles-27"), new Judging(wash), progress -> true).search();
        assertThat(found.works()).isEmpty();
        assertThat(found.unjudged())
                .hasSize(5)
                .allMatch(card -> Contents.of(card.key(), wash.brief(), wash.book()).stream()
                        .anyMatch(share -> share.isSurfactant(ChargeClass.ANIONIC)));
    }

    @Test
    void nothingIsBoughtWhereTheShelfHasAnAnswer() {
        Result result = solve(ReformulationTest.recast(), ReformulationTest.shelf(400), Wish.without("sles-27"));
        assertThat(result.answers()).isNotEmpty();
        assertThat(result.bought()).isEmpty();
    }
}
