package stillroom.formulary.reformulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.Subjects;
import stillroom.science.blend.Patience;

/** What cannot be kept is named, and each way out leads to a formula; a little less than it does not. */
class WaysOutTest {
    private static final double LITTLE = 0.02;

    static Stream<Wish> impossible() {
        Bands usual = Bands.USUAL;
        Wish gone = Wish.without("sles-27");
        return Stream.of(
                gone,
                gone.atMost(OptionalInt.of(4)),
                Wish.of(Goal.LEAST_CHANGE).atMost(OptionalInt.of(5)),
                Wish.of(Goal.LEAST_CHANGE).with(usual.withCost(0.2)),
                Wish.without("cocamidopropyl-betaine-30"),
                Wish.without("glycerin-99"),
                Wish.without("sodium-benzoate"),
                Wish.without("water-purified").with(usual.noHarsher(true)));
    }

    private static Shelf bare() {
        Map<String, Double> onHand = ReformulationTest.handWash().lines().stream()
                .map(Line::materialKey)
                .collect(Collectors.toMap(key -> key, key -> 1000.0));
        return new Shelf(onHand, OptionalDouble.empty());
    }

    private static Result solve(Wish wish) {
        return new Reformulation(ReformulationTest.recast(), bare(), Patience.ENDLESS).solve(wish);
    }

    @ParameterizedTest
    @MethodSource("impossible")
    void eachWayOutLeadsToAFormula(Wish wish) {
        Result result = solve(wish);
        assertThat(result.answers()).isEmpty();
        assertThat(result.conflict()).isNotEmpty();
        assertThat(result.reliefs().size() + result.bought().size())
                .as("ways out of " + result.conflict())
                .isPositive();
        for (Relief way : result.reliefs()) {
            assertThat(way.wish().without()).as(way.words()).containsAll(wish.without());
            Result then = solve(way.wish());
            assertThat(then.conflict()).as(way.words()).isEmpty();
            assertThat(then.answers().size() + then.refused().size())
                    .as(way.words())
                    .isPositive();
        }
    }

    /**
     * Without polysorbate the HLB cannot be kept, and without either humectant not their shelf: neither by itself makes a formula
     * possible. Together they do; by a little less of the one that is no HLB there is none.
     */
    @Test
    void whereOnlyTheSumSufficesItIsOneWayOut() {
        Map<String, Double> onHand = Map.of("steareth-2", 1000.0);
        Reformulation lotion =
                new Reformulation(Lotion.recast(), new Shelf(onHand, OptionalDouble.empty()), Patience.ENDLESS);
        Wish gone = Wish.without("polysorbate-60", "glycerin-99", "propanediol");
        Result result = lotion.solve(gone);
        assertThat(result.answers()).isEmpty();
        assertThat(result.reliefs()).hasSize(1);
        Relief way = result.reliefs().get(0);
        assertThat(way.words())
                .startsWith("Allow together ")
                .contains("humectant shelf at least 0 %", "HLB of the emulsifiers at least ");
        assertThat(lotion.solve(way.wish()).answers()).isNotEmpty();
        double width = way.wish().bands().own().get("Humectant shelf");
        Bands narrower = way.wish().bands().withOwn("Humectant shelf", width - 1);
        assertThat(lotion.solve(way.wish().with(narrower)).answers()).isEmpty();
    }

    /** Of water, surfactant and humectant nothing is left: no band helps, and what is gone is not offered again. */
    @Test
    void whatIsGoneIsNoWayOut() {
        Wish gone = Wish.without("water-purified", "glycerin-99", "sles-27");
        Result result = solve(gone);
        assertThat(result.answers()).isEmpty();
        assertThat(result.conflict()).isNotEmpty();
        assertThat(result.reliefs()).isEmpty();
    }

    /** None of the conflict can be spared: with one fewer of the named materials' bands, here the count, there is a formula. */
    @Test
    void theLeastReliefIsTheLeast() {
        Wish wish = Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withCost(0.2));
        Relief cost = solve(wish).reliefs().stream()
                .filter(way -> way.words().startsWith("Allow cost per 100 g at most"))
                .findFirst()
                .orElseThrow();
        double enough = cost.wish().bands().cost().getAsDouble();
        assertThat(solve(wish.with(Bands.USUAL.withCost(enough - 3e-4))).answers())
                .isEmpty();
        Wish few = Wish.of(Goal.LEAST_CHANGE).atMost(OptionalInt.of(5));
        Relief count = solve(few).reliefs().stream()
                .filter(way -> way.words().endsWith(" ingredients."))
                .findFirst()
                .orElseThrow();
        int most = count.wish().atMost().getAsInt();
        assertThat(solve(few.atMost(OptionalInt.of(most - 1))).answers()).isEmpty();
    }

    @Test
    void aWiderBandIsTheLeastThatSuffices() {
        Wish gone = Wish.without("cocamidopropyl-betaine-30");
        Result result = solve(gone);
        assertThat(result.conflict())
                .containsExactlyInAnyOrder(
                        "Cocamidopropyl betaine, 30 % active is to go", "Amphoteric active matter at least 2.47 %");
        Relief band = result.reliefs().stream()
                .filter(way -> way.wish().bands().own().containsKey("Amphoteric active matter"))
                .findFirst()
                .orElseThrow();
        double width = band.wish().bands().own().get("Amphoteric active matter");
        Bands narrower = band.wish().bands().withOwn("Amphoteric active matter", width - LITTLE);
        assertThat(solve(band.wish().with(narrower)).answers()).isEmpty();
    }

    /** A law that is broken is refused with its words; the refused stand in the result. */
    @Test
    void whatWouldBreakTheLawIsRefusedWithItsWords() {
        Shelf all = ReformulationTest.shelf(400);
        Result result = new Reformulation(ReformulationTest.recast(), all, Patience.ENDLESS)
                .solve(Wish.without("sodium-benzoate"));
        for (Answer answer : result.answers()) {
            Evaluation again = Lotion.EVALUATOR.evaluate(
                    Subjects.of(answer.formula(), ReformulationTest.recast().brief()),
                    Lotion.BOOK,
                    ReformulationTest.recast().prices(),
                    Lotion.DAY);
            assertThat(again).isEqualTo(answer.evaluation());
            List<Finding> breaches = again.findings().stream()
                    .filter(finding -> finding.kind() == Finding.Kind.BREACH)
                    .toList();
            assertThat(breaches).isEmpty();
        }
    }
}
