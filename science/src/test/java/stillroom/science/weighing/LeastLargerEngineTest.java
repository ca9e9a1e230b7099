package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/** The least larger whole against the simplex method of a general-purpose numerics library (Hipparchus). */
class LeastLargerEngineTest {
    @Test
    void leastWholeIsTheOptimumOfTheLinearProgramme() {
        Random random = new Random(1947);
        int larger = 0;
        for (int run = 0; run < 300; run++) {
            List<LeastLarger.Part> parts = randomParts(random);
            BigDecimal planned = BigDecimal.valueOf(100);
            BigDecimal whole = LeastLarger.whole(parts, planned);
            assertThat(whole.doubleValue()).isCloseTo(byLinearProgramme(parts, 100), offset(1e-6));
            larger += whole.compareTo(planned) > 0 ? 1 : 0;
            endsInTolerance(parts, whole);
        }
        assertThat(larger).isGreaterThan(200);
    }

    /** By hand: 12 g where 10 % of 100 g was meant need 120 g without tolerance, 12 / 0.105 = 114.2857 g with 5 %. */
    @Test
    void twoPartsByHand() {
        assertThat(LeastLarger.whole(twoParts("0"), BigDecimal.valueOf(100))).isEqualByComparingTo("120");
        assertThat(LeastLarger.whole(twoParts("0.05"), BigDecimal.valueOf(100)).doubleValue())
                .isCloseTo(114.285714, offset(1e-6));
    }

    private static List<LeastLarger.Part> twoParts(String tolerance) {
        return List.of(
                new LeastLarger.Part(new BigDecimal("0.1"), new BigDecimal(tolerance), BigDecimal.valueOf(12)),
                new LeastLarger.Part(new BigDecimal("0.9"), new BigDecimal(tolerance), BigDecimal.ZERO));
    }

    private static void endsInTolerance(List<LeastLarger.Part> parts, BigDecimal whole) {
        List<BigDecimal> masses = LeastLarger.masses(parts, whole);
        double sum = 0;
        for (int i = 0; i < parts.size(); i++) {
            LeastLarger.Part part = parts.get(i);
            double mass = masses.get(i).doubleValue();
            sum += mass;
            assertThat(mass)
                    .isBetween(
                            part.least(whole).doubleValue() - 1e-9,
                            part.most(whole).doubleValue() + 1e-9);
            assertThat(mass).isGreaterThanOrEqualTo(part.there().doubleValue() - 1e-9);
        }
        assertThat(sum).isCloseTo(whole.doubleValue(), offset(1e-9));
    }

    private static double byLinearProgramme(List<LeastLarger.Part> parts, double planned) {
        int n = parts.size();
        List<LinearConstraint> constraints = new ArrayList<>();
        double[] sum = new double[n + 1];
        double[] objective = new double[n + 1];
        objective[n] = 1;
        sum[n] = -1;
        for (int i = 0; i < n; i++) {
            sum[i] = 1;
            LeastLarger.Part part = parts.get(i);
            constraints.add(bound(n, i, 0, Relationship.GEQ, part.there().doubleValue()));
            constraints.add(bound(n, i, part.least(BigDecimal.ONE).doubleValue(), Relationship.GEQ, 0));
            constraints.add(bound(n, i, part.most(BigDecimal.ONE).doubleValue(), Relationship.LEQ, 0));
        }
        constraints.add(new LinearConstraint(sum, Relationship.EQ, 0));
        constraints.add(new LinearConstraint(objective, Relationship.GEQ, planned));
        PointValuePair best = new SimplexSolver(1e-9)
                .optimize(
                        new LinearObjectiveFunction(objective, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true));
        return best.getValue();
    }

    /** x_i - perWhole * M against a bound. */
    private static LinearConstraint bound(int n, int i, double perWhole, Relationship relationship, double value) {
        double[] row = new double[n + 1];
        row[i] = 1;
        row[n] = -perWhole;
        return new LinearConstraint(row, relationship, value);
    }

    private static List<LeastLarger.Part> randomParts(Random random) {
        int n = 2 + random.nextInt(8);
        int[] weights = random.ints(n, 1, 1000).toArray();
        long all = java.util.Arrays.stream(weights).asLongStream().sum();
        List<LeastLarger.Part> parts = new ArrayList<>();
        for (int weight : weights) {
            BigDecimal fraction = BigDecimal.valueOf(weight).divide(BigDecimal.valueOf(all), MathContext.DECIMAL128);
            BigDecimal tolerance = BigDecimal.valueOf(random.nextInt(10), 2);
            double there = random.nextInt(3) == 0 ? 0 : fraction.doubleValue() * 100 * (0.9 + random.nextDouble() / 3);
            parts.add(new LeastLarger.Part(fraction, tolerance, BigDecimal.valueOf(Math.round(there * 100), 2)));
        }
        return parts;
    }
}
