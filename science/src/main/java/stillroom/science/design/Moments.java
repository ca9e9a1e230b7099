package stillroom.science.design;

import java.util.List;
import java.util.SplittableRandom;
import stillroom.science.mixture.Polytope;

/**
 * The mean of f f' over the region, for the mean variance of a prediction. Exact where the region can be cut into few enough
 * simplices; else from a seeded walk that fills it evenly.
 *
 * @param matrix in turned regressors, row after row
 * @param exact whether it is no sample
 */
record Moments(double[] matrix, boolean exact) {
    private static final int POINTS = 4000;
    private static final int STEPS_BETWEEN = 6;
    private static final long WORK = 60_000_000;

    /** Gauss's three points, exact to the fifth power of a process variable between -1 and 1. */
    private static final double[] LEVELS = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] SHARES = {5 / 18.0, 8 / 18.0, 5 / 18.0};

    /** Process variables count evenly between -1 and 1. */
    static Moments over(DesignSpace space, int processes, long seed) {
        Polytope region = space.polytope();
        List<Cubature.Node> nodes = Cubature.nodes(region.dimension(), 2 * space.blendingDegree());
        double pointsEach = nodes.size() * Math.pow(3, processes);
        int most = (int) (WORK / (pointsEach * space.terms() * space.terms()));
        return region.simplices(most)
                .map(simplices -> new Moments(integrated(space, processes, simplices, nodes), true))
                .orElseGet(() -> new Moments(sampled(space, processes, seed), false));
    }

    private static double[] integrated(
            DesignSpace space, int processes, List<double[][]> simplices, List<Cubature.Node> nodes) {
        int p = space.terms();
        double[] sum = new double[p * p];
        double whole = simplices.stream().mapToDouble(Moments::size).sum();
        double[] row = new double[p];
        for (double[][] corners : simplices) {
            double share = size(corners) / whole;
            for (Cubature.Node node : nodes) {
                double[] mixture = new double[corners[0].length];
                for (int k = 0; k < corners.length; k++) {
                    Kernel.add(mixture, node.place()[k], corners[k]);
                }
                settings(space, mixture, processes, share * node.weight(), row, sum);
            }
        }
        return sum;
    }

    private static void settings(
            DesignSpace space, double[] mixture, int processes, double weight, double[] row, double[] sum) {
        int all = (int) Math.pow(3, processes);
        for (int code = 0; code < all; code++) {
            double[] point = java.util.Arrays.copyOf(mixture, mixture.length + processes);
            double share = weight;
            int rest = code;
            for (int k = mixture.length; k < point.length; k++) {
                point[k] = LEVELS[rest % 3];
                share *= SHARES[rest % 3];
                rest /= 3;
            }
            space.fill(point, row, 0);
            Kernel.update(sum, share, row);
        }
    }

    /** Volume, up to a factor that all simplices of the region share: the edges' determinant, from their products. */
    private static double size(double[][] corners) {
        int d = corners.length - 1;
        double[] products = new double[d * d];
        for (int i = 0; i < d; i++) {
            for (int k = 0; k < d; k++) {
                products[i * d + k] = Kernel.dot(edge(corners, i), edge(corners, k));
            }
        }
        return Math.exp(Kernel.invert(products, d) / 2);
    }

    private static double[] edge(double[][] corners, int i) {
        double[] edge = corners[i + 1].clone();
        Kernel.add(edge, -1, corners[0]);
        return edge;
    }

    private static double[] sampled(DesignSpace space, int processes, long seed) {
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
