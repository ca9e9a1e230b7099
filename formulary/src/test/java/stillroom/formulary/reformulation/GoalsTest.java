package stillroom.formulary.reformulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.science.blend.Patience;

/** Goals other than the least change, on a lotion for which HLB applies. */
class GoalsTest {
    private static Reformulation work() {
        return new Reformulation(Lotion.recast(), Lotion.shelf(), Patience.ENDLESS);
    }

    private static Answer best(Wish wish) {
        Answer best = work().solve(wish.with(wish.goal(), 1)).answers().get(0);
        assertThat(best.disagreements()).isEmpty();
        assertThat(best.proven()).isTrue();
        return best;
    }

    private static Bands bands(double hlb, double charge, Map<String, Double> constituents) {
        Bands usual = Bands.USUAL;
        return new Bands(
                usual.activeMatter(),
                usual.water(),
                charge,
                usual.family(),
                hlb,
                usual.cost(),
                usual.natural(),
                constituents);
    }

    private static double figure(Answer answer, String name, boolean after) {
        Answer.Compared figure = answer.figures().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        return after ? figure.after() : figure.before();
    }

    @Test
    void theFewestAreFewerAndNoFewerArePossible() {
        Answer few = best(Wish.of(Goal.FEWEST));
        int count = (int) Measure.COUNT.of(few);
        assertThat(count).isLessThan(Lotion.formula().lines().size());
        Result fewer = work().solve(Wish.of(Goal.LEAST_CHANGE).atMost(OptionalInt.of(count - 1)));
        assertThat(fewer.answers()).isEmpty();
        assertThat(fewer.conflict()).isNotEmpty();
        Result enough = work().solve(Wish.of(Goal.LEAST_CHANGE).atMost(OptionalInt.of(count)));
        assertThat(enough.answers()).isNotEmpty();
    }

    @Test
    void theMostNaturalIsTheEdgeOfWhatIsPossible() {
        Recast known = Balm.recast();
        Reformulation natural = new Reformulation(known, Lotion.shelf(), Patience.ENDLESS);
        Answer most = natural.solve(Wish.of(Goal.MOST_NATURAL)).answers().get(0);
        assertThat(most.disagreements()).isEmpty();
        assertThat(figure(most, "Natural origin", true)).isGreaterThan(figure(most, "Natural origin", false));
        double edge = Measure.NATURAL.of(most);
        Wish beyond = Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withNatural(edge + 0.05));
        assertThat(natural.solve(beyond).conflict()).anyMatch(words -> words.startsWith("Natural origin at least"));
        Wish within = Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withNatural(edge - 0.05));
        assertThat(natural.solve(within).answers()).isNotEmpty();
    }

    /** The lotion has cards without an index: what is raised is what is guaranteed, and no formula guarantees more. */
    @Test
    void whereAnIndexIsMissingTheGuaranteedIsRaised() {
        Answer most = best(Wish.of(Goal.MOST_NATURAL));
        Origin before = most.originBefore();
        assertThat(before.isKnown()).isFalse();
        assertThat(most.origin().guaranteed()).isGreaterThan(before.guaranteed());
        assertThat(most.evaluation().figures().others())
                .noneMatch(figure -> figure.name().equals("Natural origin"));
        double beyond = most.origin().guaranteed() + 0.05;
        Result more = work().solve(Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withNatural(beyond)));
        assertThat(more.answers()).isEmpty();
        assertThat(more.conflict()).anyMatch(words -> words.startsWith("Natural origin at least"));
    }

    @Test
    void hlbIsKeptWhereItApplies() {
        Wish without = Wish.without("polysorbate-60").with(bands(0.5, 15, Map.of()));
        Answer answer = best(without);
        double before = figure(answer, Requirements.HLB, false);
        assertThat(figure(answer, Requirements.HLB, true)).isBetween(before - 0.502, before + 0.502);
        assertThat(figure(answer, Requirements.REQUIRED_HLB, true))
                .isBetween(
                        figure(answer, Requirements.REQUIRED_HLB, false) - 0.502,
                        figure(answer, Requirements.REQUIRED_HLB, false) + 0.502);
        // Without the bands the nearest formula has another HLB, so they are what keeps it.
        Answer free =
                best(Wish.without("polysorbate-60").with(bands(20, 15, Map.of()).withOwn(Requirements.AGAINST, 20)));
        assertThat(Math.abs(figure(free, Requirements.HLB, true) - before)).isGreaterThan(0.6);
    }

    @Test
    void aConstituentIsKeptByItsBand() {
        double before = glycerin(Lotion.evaluation());
        Wish cheap = Wish.of(Goal.LOWEST_COST);
        Answer free = best(cheap);
        assertThat(Math.abs(glycerin(free.evaluation()) - before)).isGreaterThan(0.1);
        Answer kept = best(cheap.with(bands(1, 15, Map.of("glycerin", 2.0))));
        assertThat(glycerin(kept.evaluation())).isBetween(0.98 * before - 0.001, 1.02 * before + 0.001);
    }

    private static double glycerin(Evaluation evaluation) {
        return evaluation.composition().shares().stream()
                .filter(share -> share.substance().equals("glycerin"))
                .mapToDouble(share -> 100 * share.inThePot().nominal())
                .sum();
    }

    /** Of the hand wash, which has no HLB that could set the cheapest behind. */
    private static Answer wash(Wish wish) {
        return new Reformulation(ReformulationTest.recast(), ReformulationTest.shelf(400), Patience.ENDLESS)
                .solve(wish)
                .answers()
                .get(0);
    }

    @Test
    void aMixLiesBetweenItsGoals() {
        Answer cheap = wash(Wish.of(Goal.LOWEST_COST));
        Answer near = wash(Wish.of(Goal.LEAST_CHANGE));
        Answer mixed = wash(Wish.of(Goal.mix(20, 80, 0, 0)));
        assertThat(Measure.COST.of(mixed)).isBetween(Measure.COST.of(cheap) - 1e-4, Measure.COST.of(near) + 1e-4);
        assertThat(Measure.CHANGE.of(mixed)).isBetween(Measure.CHANGE.of(near) - 1e-2, Measure.CHANGE.of(cheap) + 1e-2);
        assertThatThrownBy(() -> Goal.mix(0, 0, 0, 0)).hasMessageContaining("above 0");
    }

    @Test
    void pricesAreToldInWhatTheGoalWeighs() {
        assertThat(best(Wish.of(Goal.LOWEST_COST)).prices())
                .isNotEmpty()
                .allMatch(words -> words.matches("Each .* (costs|saves) 0\\.\\d+ per 100 g\\."));
        Wish natural = Wish.of(Goal.LEAST_CHANGE).with(Bands.USUAL.withNatural(84));
        Answer balm = new Reformulation(Balm.recast(), Lotion.shelf(), Patience.ENDLESS)
                .solve(natural)
                .answers()
                .get(0);
        assertThat(balm.prices()).contains("Each 0.1 % more of natural origin adds 0.20 % to the changes.");
        Reformulation wash =
                new Reformulation(ReformulationTest.recast(), ReformulationTest.shelf(400), Patience.ENDLESS);
        assertThat(wash.solve(Wish.of(Goal.mix(4, 96, 0, 0))).answers())
                .flatExtracting(Answer::prices)
                .anyMatch(words ->
                        words.matches("Each .* (costs|saves) 0\\.\\d+ per 100 g and (adds|takes) .* changes\\."));
    }

    /** The price of a band is what a wider band saves. */
    @Test
    void aPriceIsWhatTheNextStepSaves() {
        Wish cheap = Wish.of(Goal.LOWEST_COST);
        Answer here = best(cheap);
        String nonionic = here.prices().stream()
                .filter(words -> words.startsWith("Each 0.1 % more of nonionic active matter costs"))
                .findFirst()
                .orElseThrow();
        double price = Double.parseDouble(nonionic.replaceAll("^.* costs ([0-9.]+) per.*$", "$1"));
        Bands usual = Bands.USUAL;
        // A tenth of a percent of the formula, of the four percent of emulsifiers.
        double active = usual.activeMatter() + 100 * 0.1 / 4;
        Answer wider = best(cheap.with(new Bands(
                active,
                usual.water(),
                usual.charge(),
                usual.family(),
                usual.hlb(),
                usual.cost(),
                usual.natural(),
                Map.of())));
        double saved = Measure.COST.of(here) - Measure.COST.of(wider);
        // Two digits are said, and percentages are rounded to three decimals.
        assertThat(saved).isCloseTo(price, within(6e-5));
    }

    /** With the same materials a price is exact near by; with others a wider band can only save more. */
    @Test
    void noWiderBandSavesLessThanItsPrice() {
        java.util.regex.Pattern price = java.util.regex.Pattern.compile(
                "Each 0\\.1 % more of (.+ active matter|.+ shelf) costs ([0-9.]+) per 100 g\\.");
        int tried = 0;
        Recast recast = ReformulationTest.recast();
        for (int shelf : new int[] {60, 120, 400}) {
            Reformulation work = new Reformulation(recast, ReformulationTest.shelf(shelf), Patience.ENDLESS);
            Wish cheap = Wish.of(Goal.LOWEST_COST);
            Answer here = work.solve(cheap).answers().get(0);
            for (String words : here.prices()) {
                java.util.regex.Matcher told = price.matcher(words);
                if (told.matches()) {
                    String name = Character.toUpperCase(told.group(1).charAt(0))
                            + told.group(1).substring(1);
                    double at = present(recast, name);
                    double usual = name.endsWith("shelf") ? Bands.USUAL.family() : Bands.USUAL.activeMatter();
                    Bands wider = Bands.USUAL.withOwn(name, usual + 100 * 0.1 / at);
                    Answer there = work.solve(cheap.with(wider)).answers().get(0);
                    double saved = Measure.COST.of(here) - Measure.COST.of(there);
                    double said = Double.parseDouble(told.group(2));
                    assertThat(saved).as(words).isGreaterThan(0.94 * said - 4e-5);
                    if (materials(here).equals(materials(there))) {
                        assertThat(saved).as(words).isCloseTo(said, within(0.06 * said + 4e-5));
                    }
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThanOrEqualTo(6);
    }

    private static java.util.Set<String> materials(Answer answer) {
        return answer.formula().lines().stream()
                .map(line -> line.materialKey())
                .collect(java.util.stream.Collectors.toSet());
    }

    /** Where a figure stands in the present formula [%]. */
    private static double present(Recast recast, String name) {
        Problem problem = Problem.of(recast, ReformulationTest.shelf(400), Wish.of(Goal.LOWEST_COST));
        return problem.requirements().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .flatMap(Requirement::band)
                .orElseThrow()
                .at();
    }

    @Test
    void anyTwoGoalsMakeACurve() {
        for (Measure first : List.of(Measure.COST, Measure.COUNT)) {
            for (Measure second : List.of(Measure.CHANGE, Measure.COUNT, Measure.COST)) {
                if (first != second) {
                    falls(work().curve(Wish.of(Goal.LEAST_CHANGE), first, second, 4, found -> {}));
                }
            }
        }
        Reformulation natural = new Reformulation(Balm.recast(), Lotion.shelf(), Patience.ENDLESS);
        List<TradeOff> curve = natural.curve(Wish.of(Goal.LEAST_CHANGE), Measure.COST, Measure.NATURAL, 4, found -> {});
        assertThat(curve).hasSizeGreaterThanOrEqualTo(2);
        for (int k = 1; k < curve.size(); k++) {
            assertThat(curve.get(k).second()).isGreaterThan(curve.get(k - 1).second());
        }
        assertThatThrownBy(() -> work().curve(Wish.of(Goal.LEAST_CHANGE), Measure.COST, Measure.COST, 4, found -> {}))
                .hasMessageContaining("two different goals");
    }

    private static void falls(List<TradeOff> curve) {
        assertThat(curve).hasSizeGreaterThanOrEqualTo(2);
        for (int k = 1; k < curve.size(); k++) {
            assertThat(curve.get(k).first()).isGreaterThan(curve.get(k - 1).first());
            assertThat(curve.get(k).second()).isLessThan(curve.get(k - 1).second());
            assertThat(curve.get(k).answer().disagreements()).isEmpty();
        }
    }

    @Test
    void usingUpUsesMore() {
        Wish use = new Wish(Goal.LEAST_CHANGE, Bands.USUAL, Set.of(), Set.of("almond-oil"), OptionalInt.empty(), 1);
        Answer answer = best(use);
        assertThat(answer.formula().lines()).anyMatch(line -> line.materialKey().equals("almond-oil"));
        Map<String, Double> onHand = new HashMap<>(Lotion.shelf().onHand());
        onHand.put("almond-oil", 20.0);
        Shelf little = new Shelf(onHand, OptionalDouble.of(1000));
        Answer bound = new Reformulation(Lotion.recast(), little, Patience.ENDLESS)
                .solve(use)
                .answers()
                .get(0);
        double most = used(bound);
        assertThat(most).isCloseTo(2.0, within(5e-4));
        assertThat(used(answer)).isGreaterThan(most);
    }

    private static double used(Answer answer) {
        return answer.changes().stream()
                .filter(each -> each.materialKey().equals("almond-oil"))
                .mapToDouble(Answer.Change::after)
                .sum();
    }
}
