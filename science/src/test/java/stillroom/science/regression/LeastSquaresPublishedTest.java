package stillroom.science.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** NIST Statistical Reference Datasets, certified values. Source: nist-strd; data read in public test suites. */
class LeastSquaresPublishedTest {
    private static final double NINE_DIGITS = 1e-9;

    private static final double[][] LONGLEY = {
        {60323, 83.0, 234289, 2356, 1590, 107608, 1947}, {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
        {60171, 88.2, 258054, 3682, 1616, 109773, 1949}, {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
        {63221, 96.2, 328975, 2099, 3099, 112075, 1951}, {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
        {64989, 99.0, 365385, 1870, 3547, 115094, 1953}, {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
        {66019, 101.2, 397469, 2904, 3048, 117388, 1955}, {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
        {68169, 108.4, 442769, 2936, 2798, 120445, 1957}, {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
        {68655, 112.6, 482704, 3813, 2552, 123366, 1959}, {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
        {69331, 115.7, 518173, 4806, 2572, 127852, 1961}, {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
    };

    private static void agrees(double value, double certified) {
        assertThat(value / certified).isCloseTo(1, within(NINE_DIGITS));
    }

    @Test
    void longley() {
        List<Observation> rows = new ArrayList<>();
        for (double[] row : LONGLEY) {
            List<Double> regressors = new ArrayList<>(List.of(1.0));
            for (int k = 1; k < row.length; k++) {
                regressors.add(row[k]);
            }
            rows.add(new Observation(regressors, row[0], rows.size()));
        }
        LinearFit fit = LeastSquares.fit(rows);
        double[] estimates = {
            -3482258.63459582,
            15.0618722713733,
            -0.358191792925910E-01,
            -2.02022980381683,
            -1.03322686717359,
            -0.511041056535807E-01,
            1829.15146461355
        };
        double[] deviations = {
            890420.383607373,
            84.9149257747669,
            0.334910077722432E-01,
            0.488399681651699,
            0.214274163161675,
            0.226073200069370,
            455.478499142212
        };
        for (int k = 0; k < 7; k++) {
            agrees(fit.coefficients().get(k).estimate(), estimates[k]);
            agrees(fit.coefficients().get(k).standardError(), deviations[k]);
        }
        agrees(fit.residualDeviation(), 304.854073561965);
        agrees(fit.rSquared(), 0.995479004577296);
        agrees(fit.regression().squares(), 184172401.944494);
        agrees(fit.errorSquares(), 836424.055505915);
        agrees(fit.regression().f(), 330.285339234588);
    }

    @Test
    void norris() {
        List<Observation> rows = new ArrayList<>();
        double[] x = StraightLinePublishedTest.x();
        double[] y = StraightLinePublishedTest.y();
        for (int i = 0; i < x.length; i++) {
            rows.add(new Observation(List.of(1.0, x[i]), y[i], i));
        }
        LinearFit fit = LeastSquares.fit(rows);
        agrees(fit.coefficients().get(0).estimate(), -0.262323073774029);
        agrees(fit.coefficients().get(0).standardError(), 0.232818234301152);
        agrees(fit.coefficients().get(1).estimate(), 1.00211681802045);
        agrees(fit.coefficients().get(1).standardError(), 0.429796848199937E-03);
        agrees(fit.residualDeviation(), 0.884796396144373);
        agrees(fit.regression().squares(), 4255954.13232369);
        agrees(fit.regression().f(), 5436385.54079785);
        agrees(fit.errorSquares(), 26.6173985294224);
    }

    @Test
    void misra1a() {
        List<Double> x =
                list(77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0);
        List<Double> y =
                list(10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78);
        NonlinearFit.Curve curve = new NonlinearFit.Curve() {
            @Override
            public double at(double dose, double[] b) {
                return b[0] * (1 - Math.exp(-b[1] * dose));
            }

            @Override
            public double[] gradient(double dose, double[] b) {
                double e = Math.exp(-b[1] * dose);
                return new double[] {1 - e, b[0] * dose * e};
            }
        };
        for (double[] start : new double[][] {{500, 0.0001}, {250, 0.0005}}) {
            NonlinearFit fit = NonlinearFit.fit(curve, x, y, start).orElseThrow();
            agrees(fit.parameters().get(0), 2.3894212918E+02);
            agrees(fit.parameters().get(1), 5.5015643181E-04);
            agrees(fit.standardErrors().get(0), 2.7070075241E+00);
            agrees(fit.standardErrors().get(1), 7.2668688436E-06);
            agrees(fit.errorSquares(), 1.2455138894E-01);
            agrees(fit.residualDeviation(), 1.0187876330E-01);
        }
    }

    private static List<Double> list(double... figures) {
        return DoubleStream.of(figures).boxed().toList();
    }
}
