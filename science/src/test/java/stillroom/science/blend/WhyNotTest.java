package stillroom.science.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.science.blend.Explanation.Relief;

/**
 * Explanations of generated impossible blends, checked by the simplex of Hipparchus: what is named cannot be kept together, each
 * but one of it can, and what is said to suffice does.
 */
class WhyNotTest {
    private static final double NONE = Double.NEGATIVE_INFINITY;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 16);
    }

    /** Generated, then with each limit moved inwards until nothing is left. */
    private static Blend impossible(long seed) {
        Blend blend = GeneratedBlend.linear(seed, 15 + (int) (seed * 5 % 26), 4 + (int) (seed * 7 % 11));
        Random random = new Random(seed);
        while (OtherSolvers.isPossible(blend)) {
            int i = random.nextInt(blend.limits().size());
            Limit old = blend.limits().get(i);
            List<Limit> limits = new ArrayList<>(blend.limits());
            limits.set(
                    i,
                    Double.isInfinite(old.max())
                            ? Limit.atLeast(old.name(), old.values(), 1.3 * old.min())
                            : Limit.atMost(old.name(), old.values(), 0.7 * old.max()));
            blend = blend.withLimits(limits);
        }
        return blend;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noneOfTheConflictCanBeSpared(long seed) {
        Blend blend = impossible(seed);
        assertThat(BlendSolver.solve(blend, Patience.ENDLESS)).isInstanceOf(BlendAnswer.Infeasible.class);
        Explanation why = WhyNot.explain(blend, Patience.ENDLESS);
        assertThat(why.smallest()).isTrue();
        assertThat(why.conflict()).hasSizeGreaterThan(1);
        Set<Requirement> conflict = new LinkedHashSet<>(why.conflict());
        assertThat(OtherSolvers.isPossible(Relaxed.keeping(blend, conflict))).isFalse();
        for (Requirement spared : why.conflict()) {
            Set<Requirement> others = new LinkedHashSet<>(conflict);
            others.remove(spared);
            assertThat(OtherSolvers.isPossible(Relaxed.keeping(blend, others)))
                    .as("without %s", spared)
                    .isTrue();
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void oneReliefSufficesAndLessDoesNot(long seed) {
        Blend blend = impossible(seed);
        Explanation why = WhyNot.explain(blend, Patience.ENDLESS);
        for (Relief relief : why.alone()) {
            assertThat(OtherSolvers.isPossible(relieved(blend, List.of(relief), 1 + 1e-6)))
                    .as("%s", relief)
                    .isTrue();
            assertThat(OtherSolvers.isPossible(relieved(blend, List.of(relief), 0.99)))
                    .as("less than %s", relief)
                    .isFalse();
        }
    }

    /** The sum of changes, each in the measure of its limit, against a linear programme that makes it least. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void togetherTheReliefsAreLeast(long seed) {
        Blend blend = impossible(seed);
        List<Relief> together = WhyNot.explain(blend, Patience.ENDLESS).together();
        assertThat(together).isNotEmpty();
        assertThat(OtherSolvers.isPossible(relieved(blend, together, 1 + 1e-6))).isTrue();
        double sum = together.stream()
                .mapToDouble(relief -> Math.abs(relief.to() - bound(blend, relief)) / measure(blend, relief))
                .sum();
        assertThat(sum).isCloseTo(OtherSolvers.hipparchus(elastic(blend)), within(1e-7));
    }

    private static double bound(Blend blend, Relief relief) {
        Limit limit = blend.limits().get(relief.requirement().of());
        return relief.requirement().kind() == Requirement.Kind.LIMIT_MIN ? limit.min() : limit.max();
    }

    private static double measure(Blend blend, Relief relief) {
        return Math.abs(bound(blend, relief))
                + blend.limits().get(relief.requirement().of()).scale();
    }

    /** With so many times the change of each relief. */
    private static Blend relieved(Blend blend, List<Relief> reliefs, double times) {
        List<Limit> limits = new ArrayList<>(blend.limits());
        List<Ingredient> ingredients = new ArrayList<>(blend.ingredients());
        for (Relief relief : reliefs) {
            int of = relief.requirement().of();
            if (relief.requirement().kind() == Requirement.Kind.MOST) {
                Ingredient old = ingredients.get(of);
                double most = Math.min(1, old.most() + times * (relief.to() - old.most()));
                ingredients.set(of, new Ingredient(old.name(), 0, most, false, old.cost()));
            } else {
                Limit old = limits.get(of);
                boolean low = relief.requirement().kind() == Requirement.Kind.LIMIT_MIN;
                double to = bound(blend, relief) + times * (relief.to() - bound(blend, relief));
                limits.set(of, new Limit(old.name(), old.values(), low ? to : old.min(), low ? old.max() : to));
            }
        }
        return blend.withLimits(limits).withIngredients(ingredients);
    }

    /** Each limit split into its sides, each with a passing of its own, which alone costs. */
    private static Blend elastic(Blend blend) {
        List<Ingredient> ingredients = new ArrayList<>(blend.ingredients().stream()
                .map(each -> new Ingredient(each.name(), 0, each.most(), false, Cost.NONE))
                .toList());
        List<Limit> sides = new ArrayList<>();
        for (Limit limit : blend.limits()) {
            if (!Double.isInfinite(limit.min())) {
                sides.add(Limit.atLeast(limit.name(), limit.values(), limit.min()));
            }
            if (!Double.isInfinite(limit.max())) {
                sides.add(Limit.atMost(limit.name(), limit.values(), limit.max()));
            }
        }
        List<Limit> limits = new ArrayList<>();
        for (int k = 0; k < sides.size(); k++) {
            ingredients.add(new Ingredient("passing " + k, 0, 1, false, Cost.perFraction(1)));
            limits.add(withPassing(sides.get(k), k, sides.size()));
        }
        return new Blend(ingredients, limits, List.of(), sides.size());
    }

    private static Limit withPassing(Limit side, int k, int count) {
        boolean low = side.min() > NONE;
        double size = Math.abs(low ? side.min() : side.max()) + side.scale();
        List<Double> values = new ArrayList<>(side.values());
        for (int other = 0; other < count; other++) {
            values.add(other == k ? (low ? size : -size) : 0.0);
        }
        return new Limit(side.name(), values, side.min(), side.max());
    }

    /** Counts and least doses among the requirements; the judge tries all subsets of the eight materials. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void countsAndLeastDosesAreNamedToo(long seed) {
        Blend blend = GeneratedBlend.counted(GeneratedBlend.Shape.HEAVY, seed, 8, 3, 4);
        int fewer = 4;
        while (possibleInSomeSubset(blend)) {
            fewer--;
            blend = blend.withUseLimits(
                    List.of(new UseLimit("at most", blend.useLimits().get(0).of(), fewer)));
        }
        Explanation why = WhyNot.explain(blend, Patience.ENDLESS);
        assertThat(why.smallest()).isTrue();
        assertThat(why.conflict()).contains(new Requirement(Requirement.Kind.USE_LIMIT, 0));
        assertThat(possibleInSomeSubset(Relaxed.keeping(blend, Set.copyOf(why.conflict()))))
                .isFalse();
        for (Requirement spared : why.conflict()) {
            Set<Requirement> others = new LinkedHashSet<>(why.conflict());
            others.remove(spared);
            assertThat(possibleInSomeSubset(Relaxed.keeping(blend, others)))
                    .as("without %s", spared)
                    .isTrue();
        }
    }

    private static boolean possibleInSomeSubset(Blend blend) {
        int atMost = blend.useLimits().isEmpty()
                ? blend.size()
                : blend.useLimits().get(0).atMost();
        return IntStream.range(1, 1 << blend.size())
                .filter(set -> Integer.bitCount(set) <= atMost)
                .anyMatch(set -> OtherSolvers.isPossible(only(blend, set)));
    }

    /** The materials of a subset, each above its least dose. */
    private static Blend only(Blend blend, int set) {
        List<Ingredient> ingredients = new ArrayList<>();
        List<Limit> limits = new ArrayList<>(blend.limits());
        for (int j = 0; j < blend.size(); j++) {
            Ingredient each = blend.ingredients().get(j);
            boolean used = (set >> j & 1) == 1;
            ingredients.add(new Ingredient(each.name(), 0, used ? each.most() : 0, false, Cost.NONE));
            if (used && each.leastIfUsed() > 0) {
                int at = j;
                List<Double> unit = IntStream.range(0, blend.size())
                        .mapToObj(k -> k == at ? 1.0 : 0.0)
                        .toList();
                limits.add(Limit.atLeast("least " + j, unit, each.leastIfUsed()));
            }
        }
        return new Blend(ingredients, limits, List.of());
    }
}
