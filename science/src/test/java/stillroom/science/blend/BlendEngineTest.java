package stillroom.science.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Optima against other engines. */
class BlendEngineTest {
    private static final int[] MATERIALS = {12, 20, 30, 40, 60, 90, 120, 200, 300, 400};

    /** GLPK 5.0 and CBC 2.10 with a proof gap of 1e-9, ten digits printed. */
    @Test
    void sixtyMaterialsLinear() throws IOException {
        BlendAnswer answer = BlendSolver.solve(PeerBlend.read(0), Patience.ENDLESS);
        assertThat(optimum(answer)).isCloseTo(2.925797879, within(5e-10));
        assertKept(PeerBlend.read(0), answer.mix().orElseThrow());
    }

    /** GLPK 5.0 and CBC 2.10 with a proof gap of 1e-9, twelve digits printed. */
    @Test
    void sixtyMaterialsAtMostEight() throws IOException {
        BlendAnswer answer = BlendSolver.solve(PeerBlend.read(8), Patience.ENDLESS);
        assertThat(optimum(answer)).isCloseTo(4.00767915403, within(5e-11));
        assertThat(answer.mix().orElseThrow().used()).isEqualTo(8);
        assertKept(PeerBlend.read(8), answer.mix().orElseThrow());
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void linearBlendsAsTheSimplexOfHipparchus(long seed) {
        Blend blend = GeneratedBlend.linear(seed, MATERIALS[(int) (seed % 10)], 4 + (int) (seed * 7 % 21));
        BlendAnswer answer = BlendSolver.solve(blend, Patience.ENDLESS);
        double other = OtherSolvers.hipparchus(blend);
        assertThat(optimum(answer)).isCloseTo(other, within(1e-8 * (1 + other)));
        assertKept(blend, answer.mix().orElseThrow());
    }

    /** All but one: ojAlgo 57.1.0 calls it infeasible, though ours keeps every limit, and GLPK finds the same 3.334341089. */
    static LongStream seedsWithoutFault() {
        return LongStream.rangeClosed(1, 21).filter(seed -> seed != 6);
    }

    /**
     * Ours is never above ojAlgo's. Below it may be: on a busy machine ojAlgo 57.1.0 has called 2.8057 the optimum of seed 9, where
     * ours keeps every limit at 2.7772, so theirs was none. It is kept to small blends: on the larger ones it needs minutes.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsWithoutFault")
    void countedBlendsAsOjAlgo(long seed) {
        Blend blend =
                GeneratedBlend.counted(seed, 12 + (int) (seed % 4) * 6, 3 + (int) (seed % 6), 4 + (int) (seed % 3));
        BlendAnswer answer = BlendSolver.solve(blend, Patience.ENDLESS);
        double other = OtherSolvers.ojAlgo(blend, 60_000);
        assertThat(optimum(answer)).isLessThanOrEqualTo(other + 1e-8 * (1 + other));
        assertKept(blend, answer.mix().orElseThrow());
    }

    private static double optimum(BlendAnswer answer) {
        assertThat(answer).isInstanceOf(BlendAnswer.Optimal.class);
        BlendAnswer.Optimal optimal = (BlendAnswer.Optimal) answer;
        assertThat(optimal.objective() - optimal.bound()).isBetween(0.0, 1e-9 * (1 + Math.abs(optimal.objective())));
        return optimal.objective();
    }

    /** The answer keeps what was asked, reckoned from the fractions alone. */
    static void assertKept(Blend blend, Mix mix) {
        double[] fractions =
                mix.fractions().stream().mapToDouble(Double::doubleValue).toArray();
        double sum = 0;
        for (int j = 0; j < fractions.length; j++) {
            Ingredient ingredient = blend.ingredients().get(j);
            sum += fractions[j];
            if (fractions[j] != 0) {
                assertThat(fractions[j]).isBetween(ingredient.leastIfUsed() - 1e-9, ingredient.most() + 1e-9);
            }
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        for (Limit limit : blend.limits()) {
            double room = 1e-9 * limit.scale();
            assertThat(limit.of(fractions)).isBetween(limit.min() - room, limit.max() + room);
        }
        for (UseLimit limit : blend.useLimits()) {
            assertThat(limit.of().stream().filter(j -> fractions[j] > 0).count())
                    .isLessThanOrEqualTo(limit.atMost());
        }
    }
}
