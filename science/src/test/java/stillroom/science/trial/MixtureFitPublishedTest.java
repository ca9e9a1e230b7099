package stillroom.science.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.regression.LinearFit;

class MixtureFitPublishedTest {
    private static final MixtureFit YARN = Published.fit(Published.yarn(), Blending.QUADRATIC, Fitting.Selection.NONE);

    /** Relative 1e-12 against exact rational arithmetic on the printed data; NIST's printed figures agree with it. */
    private static Offset<Double> exactly(double value) {
        return within(1e-12 * Math.abs(value));
    }

    @Test
    void yarnCoefficientsAndErrors() {
        double[] estimates = {11.7, 9.4, 16.4, 19.0, 11.4, -9.6};
        double[] t = {19.38073283, 15.57084518, 27.16615541, 7.284580512, 4.370748307, -3.680630154};
        double[] p = {1.19802e-8, 8.15245e-8, 6.01284e-10, 4.64066e-5, 0.00179513, 0.00507051};
        for (int k = 0; k < 6; k++) {
            LinearFit.Coefficient one = YARN.fit().coefficients().get(k);
            assertThat(one.estimate()).isCloseTo(estimates[k], exactly(estimates[k]));
            double error = k < 3 ? 0.603692342542494 : 2.60824902242155;
            assertThat(one.standardError()).isCloseTo(error, exactly(2 * error));
            assertThat(one.t()).isCloseTo(t[k], within(5e-10 * Math.abs(t[k]) + 5e-9));
            assertThat(one.p() / p[k]).isCloseTo(1, within(1e-5));
        }
    }

    @Test
    void yarnVarianceAndItsJudgement() {
        LinearFit fit = YARN.fit();
        assertThat(fit.regression().squares()).isCloseTo(128.296, exactly(128.296));
        assertThat(fit.regression().degreesOfFreedom()).isEqualTo(5);
        assertThat(fit.regression().f()).isCloseTo(35.2031707317073, within(1e-11));
        assertThat(fit.errorSquares()).isCloseTo(6.56, exactly(6.56));
        assertThat(fit.errorDegrees()).isEqualTo(9);
        assertThat(fit.totalSquares()).isCloseTo(134.856, exactly(134.856));
        assertThat(fit.residualDeviation()).isCloseTo(0.85374989832438, within(1e-13));
        assertThat(fit.rSquared()).isCloseTo(0.951355519962034, within(1e-13));
        assertThat(fit.adjustedRSquared()).isCloseTo(0.92433080882983, within(1e-13));
        assertThat(fit.press()).isCloseTo(18.295, exactly(18.295));
        assertThat(fit.predictedRSquared()).isCloseTo(0.864336774040458, within(1e-13));
        assertThat(fit.leverages()).allMatch(h -> Math.abs(h - 1 / 2.0) < 1e-12 || Math.abs(h - 1 / 3.0) < 1e-12);
        assertThat(fit.lackOfFit().squares()).isCloseTo(0, within(1e-10));
        assertThat(fit.lackOfFit().degreesOfFreedom()).isZero();
    }

    /** Linear terms 57.629 on 2, quadratic terms 70.667 on 3, F 32.32. Source: genstat-cast (its table for the yarn). */
    @Test
    void yarnTermsInTheirOrder() {
        MixtureFit linear = Published.fit(Published.yarn(), Blending.LINEAR, Fitting.Selection.NONE);
        double[] estimates = {14.9945454545455, 9.83090909090909, 15.7945454545455};
        for (int k = 0; k < 3; k++) {
            assertThat(linear.fit().coefficients().get(k).estimate()).isCloseTo(estimates[k], within(5e-14 * 1e1));
            assertThat(linear.fit().coefficients().get(k).standardError()).isCloseTo(1.41038220402574, within(1e-13));
        }
        assertThat(linear.fit().errorSquares()).isCloseTo(77.2269090909091, within(1e-12));
        assertThat(linear.fit().rSquared()).isCloseTo(0.427337982063022, within(1e-13));
        assertThat(linear.fit().regression().squares()).isCloseTo(57.629, within(5e-4));
        LinearFit.Variance quadratic = linear.fit().improvement(YARN.fit());
        assertThat(quadratic.squares()).isCloseTo(70.667, within(5e-4));
        assertThat(quadratic.f()).isCloseTo(32.3171840354767, within(1e-11));
    }

    @Test
    void yarnIsStrongestOnAnEdge() {
        Optimum.Best best = Optimum.largest(MixtureRegion.simplex(3), 0, YARN::at);
        assertThat(best.value()).isCloseTo(17.3844298245614, within(1e-9));
        assertThat(best.point().get(0)).isCloseTo(0.293859649122807, within(1e-6));
        assertThat(best.point().get(1)).isCloseTo(0, within(1e-9));
    }

    @Test
    void etchRate() {
        MixtureFit cubic = Published.fit(Published.etch(), Blending.SPECIAL_CUBIC, Fitting.Selection.NONE);
        double[] estimates = {
            550.199514991182,
            344.723324514991,
            268.29475308642,
            689.537037037037,
            -9.03439153439153,
            58.1084656084656,
            9243.33333333333
        };
        double[] errors = {
            23.2244644111747,
            23.2244644111747,
            23.2244644111747,
            146.514888840082,
            146.514888840082,
            146.514888840082,
            940.853360174408
        };
        for (int k = 0; k < 7; k++) {
            assertThat(cubic.fit().coefficients().get(k).estimate()).isCloseTo(estimates[k], within(2e-11));
            assertThat(cubic.fit().coefficients().get(k).standardError())
                    .isCloseTo(errors[k], within(2e-12 * errors[k]));
        }
        assertThat(cubic.fit().errorSquares()).isCloseTo(7823.7819664903, within(1e-9));
        assertThat(cubic.fit().rSquared()).isCloseTo(0.983660334522136, within(1e-13));
        assertThat(cubic.fit().adjustedRSquared()).isCloseTo(0.96965490696968, within(1e-13));
        assertThat(cubic.fit().regression().f()).isCloseTo(70.2342238991265, within(1e-10));
        assertThat(cubic.fit().press()).isCloseTo(80312.0004430781, within(1e-7));
        MixtureFit quadratic = Published.fit(Published.etch(), Blending.QUADRATIC, Fitting.Selection.NONE);
        assertThat(quadratic.fit().coefficients().get(3).estimate()).isCloseTo(1343.10606060606, within(1e-10));
        assertThat(quadratic.fit().predictedRSquared())
                .describedAs("negative, and not clipped")
                .isCloseTo(-0.695919326693403, within(1e-12));
        assertThat(quadratic.said()).anyMatch(sentence -> sentence.contains("below 0"));
    }

    /** Source: scheffe-1958: b_i is the mean of a pure blend, b_ij = 4 mean_ij - 2 (mean_i + mean_j); on read data. */
    @Test
    void sweetenersFollowTheFormulasOfTheLattice() {
        LinearFit fit = Published.fit(Published.sweetener(), Blending.QUADRATIC, Fitting.Selection.NONE)
                .fit();
        double[] means = {10.4, 6.15, 3.9, 44.9 / 3, 36.5 / 3, 36.8 / 3};
        double[] expected = {
            means[0],
            means[1],
            means[2],
            4 * means[3] - 2 * (means[0] + means[1]),
            4 * means[4] - 2 * (means[0] + means[2]),
            4 * means[5] - 2 * (means[1] + means[2])
        };
        for (int k = 0; k < 6; k++) {
            assertThat(fit.coefficients().get(k).estimate()).isCloseTo(expected[k], within(1e-12));
        }
        double s = Math.sqrt(fit.errorSquares() / 9);
        assertThat(fit.coefficients().get(0).standardError()).isCloseTo(s / Math.sqrt(2), within(1e-13));
        assertThat(fit.coefficients().get(3).standardError())
                .isCloseTo(s * Math.sqrt(16 / 3.0 + 4 / 2.0 + 4 / 2.0), within(1e-12));
        assertThat(fit.pure().degreesOfFreedom()).isEqualTo(9);
        assertThat(List.of(fit.pure().squares())).allMatch(squares -> Math.abs(squares - fit.errorSquares()) < 1e-12);
    }
}
