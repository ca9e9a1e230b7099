package stillroom.science.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * NIST Statistical Reference Datasets, linear regression, "Norris" (lower difficulty): certified values, read in public
 * test suites that carry the dataset.
 */
class StraightLinePublishedTest {

    private static final List<Double> X = list(
            0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0,
            447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3,
            229.2, 669.1, 448.9, 0.5);
    private static final List<Double> Y = list(
            0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3,
            448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6,
            228.9, 668.4, 449.2, 0.2);

    static double[] x() {
        return X.stream().mapToDouble(Double::doubleValue).toArray();
    }

    static double[] y() {
        return Y.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Double> list(double... figures) {
        return DoubleStream.of(figures).boxed().toList();
    }

    @Test
    void norris() {
        StraightLine line = StraightLine.fit(X, Y);
        assertThat(line.intercept() / -0.262323073774029).isCloseTo(1, within(1e-10));
        assertThat(line.slope() / 1.00211681802045).isCloseTo(1, within(1e-10));
        assertThat(line.interceptDeviation() / 0.232818234301152).isCloseTo(1, within(1e-10));
        assertThat(line.slopeDeviation() / 0.429796848199937E-03).isCloseTo(1, within(1e-10));
        assertThat(line.residualDeviation() / 0.884796396144373).isCloseTo(1, within(1e-10));
        assertThat(line.rSquared()).isCloseTo(0.999993745883712, within(1e-12));
        assertThat(line.degreesOfFreedom()).isEqualTo(34);
    }

    /** Student's t for 95 % and one degree of freedom: 12.706 (any t table). */
    @Test
    void intervalUsesStudentsT() {
        StraightLine line = StraightLine.fit(list(0, 1, 2), list(0, 1.1, 1.9));
        assertThat(line.slopeHalfWidth(0.95) / line.slopeDeviation()).isCloseTo(12.706, within(0.0005));
    }

    @Test
    void refusesWhatIsNoLine() {
        assertThatIllegalArgumentException().isThrownBy(() -> StraightLine.fit(list(1, 1), list(2, 3)));
        assertThatIllegalArgumentException().isThrownBy(() -> StraightLine.fit(list(1), list(2)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StraightLine.fit(list(1, 2), list(2, 3)).slopeHalfWidth(0.95));
    }
}
