package stillroom.science.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.util.CombinatoricsUtils;
import org.junit.jupiter.api.Test;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.LinearConstraint;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;

class MomentsTest {
    private static final MixtureRegion BOUNDED =
            new MixtureRegion(List.of(.1, .05, .1, 0.0), List.of(.6, .5, .7, .3), List.of());

    private static double meanVariance(MixtureRegion region, MixtureModel model, List<Run> runs) {
        DesignTask task = new DesignTask(region, model, runs.size(), DesignTask.Wishes.plain());
        return OptimalDesigns.judge(task, runs).match(found -> found.design().meanVariance(), refused -> {
            throw new AssertionError(refused.reasons());
        });
    }

    /** The moments of Dirichlet's distribution, ∏ aᵢ! (q-1)!/(q-1+Σa)!, with the variances of a saturated lattice. */
    @Test
    void theWholeSimplexHasTheMomentsOfItsFormula() {
        for (int q = 3; q <= 6; q++) {
            MixtureModel linear = MixtureModel.of(q, Blending.LINEAR);
            double exact = q * (double) (2 * CombinatoricsUtils.factorial(q - 1)) / CombinatoricsUtils.factorial(q + 1);
            assertThat(meanVariance(MixtureRegion.simplex(q), linear, ClassicalDesigns.lattice(q, 1)))
                    .isCloseTo(exact, within(1e-13));
        }
        // On the {3,2} lattice f'(X'X)⁻¹f = Σ Lᵢ², L = x(2x-1) at the corners and 4xy on the edges.
        double corner = 4 * dirichlet(4) - 4 * dirichlet(3) + dirichlet(2);
        double edge = 16 * 2 * 2 * 2.0 / CombinatoricsUtils.factorial(6);
        assertThat(meanVariance(
                        MixtureRegion.simplex(3),
                        MixtureModel.of(3, Blending.QUADRATIC),
                        ClassicalDesigns.lattice(3, 2)))
                .isCloseTo(3 * corner + 3 * edge, within(1e-13));
    }

    /** E x^k over the triangle. */
    private static double dirichlet(int k) {
        return 2.0 * CombinatoricsUtils.factorial(k) / CombinatoricsUtils.factorial(k + 2);
    }

    @Test
    void twoPartsOfARegionAverageToTheWhole() {
        MixtureModel model = MixtureModel.of(4, Blending.QUADRATIC, 1, ProcessTerms.QUADRATIC);
        double[] whole = plain(BOUNDED, model);
        double[] below = plain(cut(Double.NEGATIVE_INFINITY, .05), model);
        double[] above = plain(cut(.05, Double.POSITIVE_INFINITY), model);
        double share = (whole[0] - above[0]) / (below[0] - above[0]);
        assertThat(share).isBetween(0.05, 0.95);
        for (int k = 0; k < whole.length; k++) {
            assertThat(share * below[k] + (1 - share) * above[k]).isCloseTo(whole[k], within(1e-12));
        }
    }

    private static MixtureRegion cut(double min, double max) {
        return new MixtureRegion(
                BOUNDED.lower(),
                BOUNDED.upper(),
                List.of(new LinearConstraint(List.of(0.5, -0.6, 0.4, -0.2), min, max)));
    }

    /** Moments in the turned regressors of the whole region. */
    private static double[] plain(MixtureRegion region, MixtureModel model) {
        DesignSpace space = new DesignSpace(region.polytope(), model);
        Moments moments = Moments.over(space, model.processes(), 1);
        assertThat(moments.exact()).isTrue();
        int p = space.terms();
        double[] plain = new double[p * p];
        double[][] turn = space.turn();
        for (int i = 0; i < p; i++) {
            for (int k = 0; k < p; k++) {
                for (int a = 0; a <= i; a++) {
                    for (int b = 0; b <= k; b++) {
                        plain[i * p + k] += turn[a][i] * turn[b][k] * moments.matrix()[a * p + b];
                    }
                }
            }
        }
        return plain;
    }

    @Test
    void noDesignPredictsBetterThanTheFloor() {
        DesignTask.Wishes wishes = Designs.wishes(Criterion.I, 1, 0, List.of());
        MixtureDesign many = Designs.found(Designs.task(MixtureRegion.simplex(3), Blending.QUADRATIC, 60, wishes));
        double floor = many.meanVarianceFloor().orElseThrow();
        assertThat(many.meanVariance() / floor)
                .describedAs("with many runs the weights can be had")
                .isBetween(1.0, 1.005);
        MixtureDesign few = Designs.found(Designs.task(BOUNDED, Blending.QUADRATIC, 13, wishes));
        assertThat(few.meanVariance() / few.meanVarianceFloor().orElseThrow()).isBetween(1.0, 1.3);
        assertThat(few.momentsExact()).isTrue();
    }

    @Test
    void aRegionWithTooManyCornersIsSampledAndSaysSo() {
        MixtureDesign design =
                Designs.found(Designs.task(Designs.BOUNDED_EIGHT, Blending.QUADRATIC, 45, DesignTask.Wishes.plain()));
        assertThat(design.momentsExact()).isFalse();
    }
}
