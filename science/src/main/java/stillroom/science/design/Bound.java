package stillroom.science.design;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The D-optimal design whose runs may have any weights, by trading weights between pairs of points: a ceiling for every
 * design, and a measure of which points matter. With weights w no design on the same points has more than ln det M(w) +
 * (max d - p), by concavity, d being the prediction variance. Points that cannot belong to the optimum are left out on the
 * way.
 *
 * <p>Source: kiefer-1960 (equivalence), harman-2007 (leaving out points), harman-2020 (randomised trades).
 */
final class Bound {
    private static final double CLOSE = 1e-7;

    /** Points whose variances differ by less are the same point. */
    private static final double ALIKE = 1e-9;

    private final SplittableRandom random;
    private final Meter meter;
    private final int p;
    private double[] rows;
    private int[] names;
    private double[] weight;
    private double[] variance = new double[0];
    private double[] inverse = new double[0];
    private double logDeterminant;
    private final double[] x;
    private final double[] y;
    private final double[] imageX;
    private final double[] imageY;

    /** @param start numbers of points among which the weights are shared at first */
    Bound(DesignSpace space, List<double[]> points, int[] start, SplittableRandom random, Meter meter) {
        this.random = random;
        this.meter = meter;
        this.p = space.terms();
        int m = points.size();
        rows = new double[m * p];
        for (int j = 0; j < m; j++) {
            space.fill(points.get(j), rows, j * p);
        }
        names = IntStream.range(0, m).toArray();
        weight = new double[m];
        for (int j : start) {
            weight[j] += 1.0 / start.length;
        }
        x = new double[p];
        y = new double[p];
        imageX = new double[p];
        imageY = new double[p];
    }

    /** The largest possible ln det(M) / p over the points, in turned regressors; infinite before the first round. */
    double ceiling() {
        return variance.length == 0 ? Double.POSITIVE_INFINITY : (logDeterminant + largest() - p) / p;
    }

    /** ln det(M) / p of the weighted design, in turned regressors. */
    double logMean() {
        return logDeterminant / p;
    }

    private double largest() {
        double most = 0;
        for (double d : variance) {
            most = Math.max(most, d);
        }
        return most;
    }

    /** The inverse information of the weighted design. */
    double[] inverse() {
        return inverse;
    }

    /** Trades until the largest variance is within a fraction of p. */
    void trade(double close, int rounds, BooleanSupplier enough) {
        for (int round = 0; round <= rounds; round++) {
            judge();
            double gap = largest() / p - 1;
            if (gap < Math.max(close, CLOSE) || round == rounds || enough.getAsBoolean()) {
                return;
            }
            if (gap < 1 && round % 4 == 3) {
                leaveOut(gap);
            }
            pairs();
        }
    }

    /** Names of the points with the largest variances. */
    int[] foremost(int count) {
        return IntStream.of(byVariance()).limit(count).map(j -> names[j]).toArray();
    }

    private void judge() {
        inverse = new double[p * p];
        for (int j = 0; j < weight.length; j++) {
            if (weight[j] > 0) {
                System.arraycopy(rows, j * p, x, 0, p);
                Kernel.update(inverse, weight[j], x);
            }
        }
        logDeterminant = Kernel.invert(inverse, p);
        variance = new double[weight.length];
        for (int j = 0; j < variance.length; j++) {
            System.arraycopy(rows, j * p, x, 0, p);
            variance[j] = Kernel.square(inverse, x);
        }
        meter.spend((long) p * p * (weight.length / 2 + 2 * p));
    }

    private void leaveOut(double gap) {
        double least = p * (1 + gap / 2 - Math.sqrt(gap * (4 + gap - 4.0 / p)) / 2);
        int[] kept = IntStream.range(0, weight.length)
                .filter(j -> variance[j] >= least || weight[j] > 0)
                .toArray();
        double[] fewer = new double[kept.length * p];
        for (int k = 0; k < kept.length; k++) {
            System.arraycopy(rows, kept[k] * p, fewer, k * p, p);
        }
        rows = fewer;
        names = IntStream.of(kept).map(j -> names[j]).toArray();
        weight = IntStream.of(kept).mapToDouble(j -> weight[j]).toArray();
        variance = IntStream.of(kept).mapToDouble(j -> variance[j]).toArray();
    }

    private int[] byVariance() {
        return IntStream.range(0, variance.length)
                .boxed()
                .sorted((a, b) -> Double.compare(variance[b], variance[a]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private void pairs() {
        int[] order = byVariance();
        int[] support =
                IntStream.range(0, weight.length).filter(j -> weight[j] > 0).toArray();
        int tops = Math.min(order.length, Math.max(6, p));
        for (int a = 0; a < tops; a++) {
            for (int k = 0; k < 10; k++) {
                trade(order[a], support[random.nextInt(support.length)]);
            }
        }
    }

    /** Moves the best part of one point's weight to another, or back. */
    private void trade(int to, int from) {
        if (to == from || weight[to] + weight[from] <= 0) {
            return;
        }
        System.arraycopy(rows, to * p, x, 0, p);
        System.arraycopy(rows, from * p, y, 0, p);
        Kernel.times(inverse, x, imageX);
        Kernel.times(inverse, y, imageY);
        double a = Kernel.dot(x, imageX);
        double b = Kernel.dot(y, imageY);
        double c = Kernel.dot(x, imageY);
        double curvature = a * b - c * c;
        meter.spend(2L * p * p);
        double step =
                curvature > 1e-14 ? (a - b) / (2 * curvature) : Math.abs(a - b) < ALIKE ? 0 : Math.copySign(1, a - b);
        step = Math.max(-weight[to], Math.min(weight[from], step));
        if (step >= 1e-15) {
            move(to, from, step);
        } else if (step <= -1e-15) {
            move(from, to, -step);
        }
    }

    /** Gives before it takes, so that the information is never singular in between. */
    private void move(int to, int from, double step) {
        System.arraycopy(rows, to * p, x, 0, p);
        System.arraycopy(rows, from * p, y, 0, p);
        meter.spend(5L * p * p);
        weight[to] += step;
        weight[from] -= step;
        Kernel.times(inverse, x, imageX);
        Kernel.update(inverse, -step / (1 + step * Kernel.dot(x, imageX)), imageX);
        Kernel.times(inverse, y, imageY);
        Kernel.update(inverse, step / (1 - step * Kernel.dot(y, imageY)), imageY);
    }

    /** Points to which the design gives weight. */
    int[] support() {
        return IntStream.range(0, weight.length)
                .filter(j -> weight[j] > 1e-4 / p)
                .map(j -> names[j])
                .toArray();
    }
}
