package stillroom.science.design;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Weights of points for the smallest mean variance tr(W M⁻¹): each is multiplied by the root of its share of the slope, again and
 * again, which never makes the mean larger. Source: torsney-1983 (from memory).
 */
final class Weighing {
    private final DesignSpace space;
    private final Meter meter;
    private final int p;
    private final double[] moments;
    private final double[] rows;
    private final double[] weight;
    private final double[] slope;
    private double[] smoothed = new double[0];
    private double mean = Double.POSITIVE_INFINITY;

    Weighing(DesignSpace space, List<double[]> points, double[] moments, Meter meter) {
        this.space = space;
        this.meter = meter;
        this.moments = moments;
        p = space.terms();
        rows = new double[points.size() * p];
        for (int j = 0; j < points.size(); j++) {
            space.fill(points.get(j), rows, j * p);
        }
        weight = new double[points.size()];
        Arrays.fill(weight, 1.0 / weight.length);
        slope = new double[weight.length];
    }

    /** M⁻¹WM⁻¹ of the weights. */
    double[] smoothed() {
        return smoothed.clone();
    }

    /** Until the largest slope is within a fraction of the mean. */
    void weigh(double close, int rounds) {
        for (int round = 0; round < rounds; round++) {
            judge();
            double most = Arrays.stream(slope).max().orElse(0);
            if (most < mean * (1 + close) || meter.over()) {
                return;
            }
            for (int j = 0; j < weight.length; j++) {
                weight[j] *= Math.sqrt(slope[j] / mean);
                weight[j] = weight[j] < 1e-9 ? 0 : weight[j];
            }
            double sum = Arrays.stream(weight).sum();
            for (int j = 0; j < weight.length; j++) {
                weight[j] /= sum;
            }
        }
        judge();
    }

    private void judge() {
        double[] inverse = new double[p * p];
        double[] row = new double[p];
        for (int j = 0; j < weight.length; j++) {
            if (weight[j] > 0) {
                System.arraycopy(rows, j * p, row, 0, p);
                Kernel.update(inverse, weight[j], row);
            }
        }
        Kernel.invert(inverse, p);
        mean = Kernel.trace(moments, inverse);
        smoothed = Kernel.sandwich(inverse, moments, p);
        for (int j = 0; j < weight.length; j++) {
            System.arraycopy(rows, j * p, row, 0, p);
            slope[j] = Kernel.square(smoothed, row);
        }
        meter.spend((long) weight.length * p * p * 3 / 2 + 3L * p * p * p);
    }

    double largest(List<double[]> points, double[] matrix) {
        double[] row = new double[p];
        double most = 0;
        for (double[] point : points) {
            space.fill(point, row, 0);
            most = Math.max(most, Kernel.square(matrix, row));
        }
        return most;
    }

    /** Points to which weight is given. */
    int[] support() {
        return IntStream.range(0, weight.length)
                .filter(j -> weight[j] > 1e-3 / p)
                .toArray();
    }

    double floor(double largestSlope) {
        return mean * mean / largestSlope;
    }
}
