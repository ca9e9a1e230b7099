package stillroom.science.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlendSolverTest {
    private static final double NONE = Double.NEGATIVE_INFINITY;

    /** The cheapest of each subset, by trying all subsets: 2^9 linear programmes without any branching. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void allCostsTogetherAsTryingAllSubsets(long seed) {
        Blend blend = priced(GeneratedBlend.counted(seed, 9, 3, 4), seed);
        double best = Double.POSITIVE_INFINITY;
        for (int set = 1; set < 1 << 9; set++) {
            best = Math.min(best, only(blend, set));
        }
        assertThat(((BlendAnswer.Optimal) BlendSolver.solve(blend, Patience.ENDLESS)).objective())
                .isCloseTo(best, within(1e-8));
    }

    /** A basic variable at 0 may hold the rounding of a 0, which is no ingredient and has no price of use. */
    @Test
    void theRoundingOfAnAbsentOneIsNotPaidFor() {
        for (long seed = 1; seed <= 200; seed++) {
            Blend blend = drawnToTheMiddle(seed);
            Mix best = BlendSolver.solve(blend, Patience.ENDLESS).mix().orElseThrow();
            assertThat(best.fractions())
                    .as("seed " + seed)
                    .allMatch(fraction -> fraction == 0 || fraction > Workings.NOTHING);
        }
    }

    /** An active matter that is to stay where it is, as far as it can; how far it is off stands beside the mix. */
    private static Blend drawnToTheMiddle(long seed) {
        Random random = new Random(seed);
        List<Ingredient> ingredients = new ArrayList<>();
        List<Double> active = new ArrayList<>();
        ingredients.add(new Ingredient("water", 0, 1, false, new Cost(0, 0.001, 1, 0.511)));
        active.add(0.0);
        for (int j = 0; j < 8; j++) {
            ingredients.add(new Ingredient("surfactant " + j, 0.05, 0.25 + j * 0.05, false, new Cost(0, 0.011, 1, 0)));
            active.add(Math.round(20 + 75 * random.nextDouble()) / 100.0);
        }
        ingredients.add(new Ingredient("above", 0, 1, false, Cost.perFraction(0.2)));
        ingredients.add(new Ingredient("below", 0, 1, false, Cost.perFraction(0.2)));
        List<Double> banded = new ArrayList<>(active);
        banded.addAll(List.of(0.0, 0.0));
        List<Double> middle = new ArrayList<>(active);
        middle.addAll(List.of(-0.01, 0.01));
        List<Limit> limits =
                List.of(new Limit("active", banded, 0.09, 0.11), new Limit("active, middle", middle, 0.099, 0.099));
        return new Blend(ingredients, limits, List.of(), 2);
    }

    private static Blend priced(Blend blend, long seed) {
        Random random = new Random(seed);
        List<Ingredient> ingredients = new ArrayList<>();
        for (Ingredient each : blend.ingredients()) {
            double now = random.nextBoolean() ? 0 : 0.3 * random.nextDouble();
            Cost cost = new Cost(each.cost().perFraction(), random.nextDouble(), 5 * random.nextDouble(), now);
            ingredients.add(new Ingredient(each.name(), each.leastIfUsed(), each.most(), false, cost));
        }
        return blend.withIngredients(ingredients);
    }

    private static double only(Blend blend, int set) {
        if (Integer.bitCount(set) > blend.useLimits().get(0).atMost()) {
            return Double.POSITIVE_INFINITY;
        }
        List<Ingredient> ingredients = new ArrayList<>();
        for (int j = 0; j < blend.size(); j++) {
            Ingredient each = blend.ingredients().get(j);
            ingredients.add(
                    (set >> j & 1) == 1
                            ? new Ingredient(each.name(), each.leastIfUsed(), each.most(), true, each.cost())
                            : new Ingredient(each.name(), 0, 0, false, each.cost()));
        }
        return BlendSolver.solve(new Blend(ingredients, blend.limits(), List.of()), Patience.ENDLESS)
                .match(BlendAnswer.Optimal::objective, stopped -> Double.NaN, infeasible -> Double.POSITIVE_INFINITY);
    }

    /** The work is counted, so that it stops at the same place on every machine. GLPK 5.0 proves 2.93840383257 (2.5 s; CBC 2.10.8 does not in 50 s). */
    @Test
    void stoppedSaysWhatItKnows() {
        Blend blend = GeneratedBlend.counted(106, 200, 24, 6);
        double optimum = 2.93840383257;
        double bound = NONE;
        double objective = Double.POSITIVE_INFINITY;
        for (int steps : new int[] {1, 10, 100, 300, 900}) {
            BlendAnswer.Stopped stopped =
                    (BlendAnswer.Stopped) BlendSolver.solve(blend, progress -> progress.nodes() >= steps);
            assertThat(stopped.bound()).isBetween(bound, optimum + 1e-9);
            assertThat(stopped.objective()).isBetween(optimum - 1e-9, objective);
            stopped.best().ifPresent(best -> BlendEngineTest.assertKept(blend, best));
            assertThat(stopped.best().isPresent()).isEqualTo(Double.isFinite(stopped.objective()));
            bound = stopped.bound();
            objective = stopped.objective();
            assertThat(stopped.gap())
                    .isEqualTo(stopped.best().isEmpty() ? Double.POSITIVE_INFINITY : (objective - bound) / objective);
        }
        assertThat(bound).isGreaterThan(0.8 * optimum);
        assertThat(objective).isLessThan(2 * optimum);
    }

    @Test
    void stoppedBeforeTheFirstStepItKnowsABoundAtMost() {
        Blend blend = GeneratedBlend.counted(106, 200, 24, 6);
        BlendAnswer.Stopped stopped = (BlendAnswer.Stopped) BlendSolver.solve(blend, progress -> true);
        assertThat(stopped.best()).isEmpty();
        assertThat(stopped.objective()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(stopped.bound()).isBetween(2.0, 2.93840383257);
        assertThat(stopped.gap()).isEqualTo(Double.POSITIVE_INFINITY);
    }

    /** What a limit's bound costs, against the difference of two optima. */
    @Test
    void pricesAreWhatMovingTheBoundCosts() throws java.io.IOException {
        Blend blend = PeerBlend.read(0);
        BlendAnswer.Optimal before = (BlendAnswer.Optimal) BlendSolver.solve(blend, Patience.ENDLESS);
        int checked = 0;
        for (int i = 0; i < blend.limits().size(); i++) {
            double price = before.best().prices().get(i);
            if (price != 0) {
                Limit old = blend.limits().get(i);
                List<Limit> moved = new ArrayList<>(blend.limits());
                moved.set(i, new Limit(old.name(), old.values(), old.min() + 1e-5, old.max() + 1e-5));
                BlendAnswer.Optimal after =
                        (BlendAnswer.Optimal) BlendSolver.solve(blend.withLimits(moved), Patience.ENDLESS);
                assertThat((after.objective() - before.objective()) / 1e-5).isCloseTo(price, within(1e-4));
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(5);
    }

    @Test
    void namesTheConflictAndTheLeastRelief() {
        Ingredient cheap = new Ingredient("cheap", 0.1, 0.6, false, Cost.perFraction(1));
        Ingredient dear = new Ingredient("dear", 0.1, 0.5, false, Cost.perFraction(5));
        Ingredient water = new Ingredient("water", 0, 1, false, Cost.NONE);
        Limit active = Limit.atLeast("active", List.of(20.0, 40.0, 0.0), 30);
        Limit price = Limit.atMost("price", List.of(1.0, 5.0, 0.0), 2);
        Limit idle = Limit.atMost("idle", List.of(1.0, 1.0, 1.0), 9);
        Blend blend = new Blend(List.of(cheap, dear, water), List.of(active, price, idle), List.of());
        assertThat(BlendSolver.solve(blend, Patience.ENDLESS)).isInstanceOf(BlendAnswer.Infeasible.class);

        Explanation why = WhyNot.explain(blend, Patience.ENDLESS);
        Requirement enough = new Requirement(Requirement.Kind.LIMIT_MIN, 0);
        Requirement affordable = new Requirement(Requirement.Kind.LIMIT_MAX, 1);
        assertThat(why.smallest()).isTrue();
        assertThat(why.conflict()).containsExactlyInAnyOrder(enough, affordable);
        // By hand: half and half gives 30 at a price of 3. At a price of 2, 0.6 cheap and 0.28 dear give 23.2.
        assertThat(why.alone()).hasSize(2);
        assertThat(relief(why, affordable)).isCloseTo(3, within(1e-8));
        assertThat(relief(why, enough)).isCloseTo(23.2, within(1e-8));
        assertThat(why.together()).hasSize(1);
    }

    private static double relief(Explanation why, Requirement requirement) {
        return why.alone().stream()
                .filter(each -> each.requirement().equals(requirement))
                .findFirst()
                .orElseThrow()
                .to();
    }

    @Test
    void tooFewAllowedIsAConflictOfItsOwnKind() {
        List<Ingredient> five = new ArrayList<>();
        for (int j = 0; j < 5; j++) {
            five.add(new Ingredient("m" + j, 0.05, 0.3, false, Cost.perFraction(j)));
        }
        Blend blend = new Blend(five, List.of(), List.of(new UseLimit("count", Set.of(0, 1, 2, 3, 4), 3)));
        Explanation why = WhyNot.explain(blend, Patience.ENDLESS);
        assertThat(why.conflict()).contains(new Requirement(Requirement.Kind.USE_LIMIT, 0));
        assertThat(relief(why, new Requirement(Requirement.Kind.USE_LIMIT, 0))).isEqualTo(4);
    }

    @Test
    void ingredientsThatCannotFillTheWholeAreSaid() {
        Ingredient one = new Ingredient("one", 0, 0.4, false, Cost.NONE);
        Ingredient two = new Ingredient("two", 0, 0.5, false, Cost.NONE);
        Blend blend = new Blend(List.of(one, two), List.of(new Limit("any", List.of(1.0, 1.0), NONE, 1)), List.of());
        Explanation why = WhyNot.explain(blend, Patience.ENDLESS);
        assertThat(why.conflict())
                .containsExactlyInAnyOrder(
                        new Requirement(Requirement.Kind.MOST, 0), new Requirement(Requirement.Kind.MOST, 1));
        assertThat(relief(why, new Requirement(Requirement.Kind.MOST, 0))).isCloseTo(0.5, within(1e-9));
    }
}
