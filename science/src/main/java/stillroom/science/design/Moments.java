package stillroom.science.design;

import java.util.List;
import java.util.SplittableRandom;
import stillroom.science.mixture.Polytope;

/** The mean of f f' over the region, for the mean variance of a prediction: from a seeded walk that fills it evenly. */
final class Moments {
    private static final int POINTS = 4000;
    private static final int STEPS_BETWEEN = 6;

    private Moments() {}

    /** In turned regressors. Process variables count evenly between -1 and 1. */
    static double[] over(DesignSpace space, int processes, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Polytope region = space.polytope();
        List<double[]> corners = region.vertices();
        double[] mixture = region.centroid();
        int p = space.terms();
        double[] sum = new double[p * p];
        double[] row = new double[p];
        for (int k = 0; k < POINTS; k++) {
            for (int step = 0; step < STEPS_BETWEEN; step++) {
                mixture = somewhere(region, corners, mixture, random);
            }
            double[] point = java.util.Arrays.copyOf(mixture, mixture.length + processes);
            for (int w = 0; w < processes; w++) {
                point[mixture.length + w] = 2 * random.nextDouble() - 1;
            }
            space.fill(point, row, 0);
            Kernel.update(sum, 1.0 / POINTS, row);
        }
        return sum;
    }

    /** A point at random on a line through the mixture, in a direction between two random mixtures of corners: hit and run. */
    private static double[] somewhere(
            Polytope region, List<double[]> corners, double[] mixture, SplittableRandom random) {
        double[] direction = new double[mixture.length];
        for (double[] corner : corners.size() < 40 ? corners : some(corners, random)) {
            double weight = gaussian(random);
            for (int i = 0; i < direction.length; i++) {
                direction[i] += weight * (corner[i] - mixture[i]);
            }
        }
        double forth = region.reach(mixture, direction);
        double back = region.reach(mixture, negative(direction));
        double length = -back + (forth + back) * random.nextDouble();
        double[] there = mixture.clone();
        if (Double.isFinite(length)) {
            Kernel.add(there, length, direction);
        }
        return there;
    }

    private static List<double[]> some(List<double[]> corners, SplittableRandom random) {
        return random.ints(12, 0, corners.size()).mapToObj(corners::get).toList();
    }

    private static double gaussian(SplittableRandom random) {
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            sum += random.nextDouble() - 0.5;
        }
        return sum;
    }

    private static double[] negative(double[] a) {
        double[] n = new double[a.length];
        Kernel.add(n, -1, a);
        return n;
    }
}
