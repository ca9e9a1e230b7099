package stillroom.science.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;

/** Compared with the exchange algorithm of a statistics package. Source: algdesign-1.2.1.2 (optFederov, R 4.2.2). */
class OptimalDesignEngineTest {
    private static final double EXCHANGE_A = 0.0396850263;
    private static final double EXCHANGE_B = 0.006881460261;
    private static final double BEST_KNOWN_B = 0.006912151894;
    private static final double CEILING_B = 0.00710282557;

    @Test
    void threeFreeComponentsInTenRuns() {
        MixtureDesign design = Designs.found(
                Designs.task(MixtureRegion.simplex(3), Blending.QUADRATIC, 10, DesignTask.Wishes.plain()));
        assertThat(design.d()).isGreaterThan(EXCHANGE_A - 5e-11);
        assertThat(recomputed(design, MixtureRegion.simplex(3))).isCloseTo(design.d(), within(1e-13));
    }

    @Test
    void fourBoundedComponentsInFifteenRunsReachTheBestKnown() {
        MixtureDesign design =
                Designs.found(Designs.task(Designs.BOUNDED_FOUR, Blending.QUADRATIC, 15, DesignTask.Wishes.plain()));
        assertThat(design.d()).isGreaterThan(EXCHANGE_B).isGreaterThan(BEST_KNOWN_B - 5e-13);
        assertThat(recomputed(design, Designs.BOUNDED_FOUR)).isCloseTo(design.d(), within(1e-13));
        assertThat(design.dCeiling().orElseThrow())
                .describedAs("each a bound from above of the same optimum, so the lower one is the sharper")
                .isBetween(design.d(), CEILING_B * 1.00001)
                .isCloseTo(CEILING_B, within(1e-7));
        for (Run run : design.runs()) {
            assertThat(Designs.BOUNDED_FOUR.contains(run.point(), 1e-9)).isTrue();
        }
    }

    /** The definition, with another library's determinant. */
    private static double recomputed(MixtureDesign design, MixtureRegion region) {
        MixtureModel model = MixtureModel.of(region.components(), Blending.QUADRATIC);
        RealMatrix x = MatrixUtils.createRealMatrix(design.runs().stream()
                .map(run -> model.at(region.pseudo(run.point())))
                .toArray(double[][]::new));
        double determinant = new LUDecomposition(x.transposeMultiply(x)).getDeterminant();
        return Math.pow(determinant, 1.0 / model.terms().size()) / design.runs().size();
    }
}
