package stillroom.science.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.Polytope;

/** Looks over a region for the mixture that is best, whatever best means. */
public final class Optimum {
    private Optimum() {}

    /**
     * A response fitted, and what is wanted of it.
     *
     * @param fit of the response
     * @param wish for it
     */
    public record Wanted(MixtureFit fit, Wish wish) {}

    /**
     * The mixture found.
     *
     * @param point fractions, then coded process variables
     * @param value what was made large there
     */
    public record Best(List<Double> point, double value) {
        public Best {
            point = List.copyOf(point);
        }

        public double[] array() {
            return point.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /** The largest overall desirability: the weighted geometric mean over the responses. Source: derringer-1980. */
    public static Best desirable(MixtureRegion region, int processes, List<Wanted> wanted) {
        double weights = wanted.stream().mapToDouble(one -> one.wish().weight()).sum();
        ToDoubleFunction<double[]> overall = point -> {
            double product = 1;
            double nearness = 0;
            for (Wanted one : wanted) {
                double estimate = one.fit().at(point);
                product *=
                        Math.pow(one.wish().desirability(estimate), one.wish().weight() / weights);
                nearness -= miss(one.wish(), estimate);
            }
            // Where nothing is desirable at all, the nearest miss leads the way.
            return product > 0 ? product : 1e-3 * Math.max(-1, nearness);
        };
        return largest(region, processes, overall);
    }

    private static double miss(Wish wish, double value) {
        double below = wish.aim() == Wish.Aim.SMALLER ? 0 : Math.max(0, wish.low() - value);
        double above = wish.aim() == Wish.Aim.LARGER ? 0 : Math.max(0, value - wish.high());
        return (below + above) / (wish.high() - wish.low());
    }

    /** Where the model is least sure, so that another run is worth most there: the largest variance of the mean response. */
    public static Best worthAnotherRun(MixtureFit fit) {
        return largest(fit.region(), fit.model().processes(), fit::variance);
    }

    /** The point of the region with the largest value: from corners, edges, faces and centre, by ever finer steps. */
    public static Best largest(MixtureRegion region, int processes, ToDoubleFunction<double[]> value) {
        Polytope body = region.polytope();
        List<double[]> starts = new ArrayList<>();
        for (double[] mixture : mixtures(body)) {
            settings(mixture, processes, starts);
        }
        starts.sort((a, b) -> Double.compare(value.applyAsDouble(b), value.applyAsDouble(a)));
        double[] best = starts.get(0);
        for (double[] start : starts.subList(0, Math.min(12, starts.size()))) {
            double[] top = climb(body, start, processes, value);
            best = value.applyAsDouble(top) > value.applyAsDouble(best) ? top : best;
        }
        return new Best(Arrays.stream(best).boxed().toList(), value.applyAsDouble(best));
    }

    private static List<double[]> mixtures(Polytope body) {
        List<double[]> mixtures = new ArrayList<>(body.vertices());
        double[] centre = body.centroid();
        mixtures.addAll(body.edgeMidpoints());
        mixtures.addAll(body.facetCentroids());
        int outer = mixtures.size();
        for (int i = 0; i < outer; i++) {
            mixtures.add(between(mixtures.get(i), centre, 0.5));
        }
        mixtures.add(centre);
        return mixtures;
    }

    private static void settings(double[] mixture, int processes, List<double[]> into) {
        int all = (int) Math.pow(3, processes);
        for (int code = 0; code < all; code++) {
            double[] point = Arrays.copyOf(mixture, mixture.length + processes);
            int rest = code;
            for (int k = 0; k < processes; k++) {
                point[mixture.length + k] = rest % 3 - 1;
                rest /= 3;
            }
            into.add(point);
        }
    }

    private static double[] climb(Polytope body, double[] start, int processes, ToDoubleFunction<double[]> value) {
        double[] point = start.clone();
        double top = value.applyAsDouble(point);
        int q = point.length - processes;
        double step = 0.25;
        while (step > 1e-10) {
            double before = top;
            for (double[] direction : directions(q, point.length)) {
                double[] next = moved(body, point, direction, step, q);
                double there = value.applyAsDouble(next);
                if (there > top) {
                    point = next;
                    top = there;
                }
            }
            for (double[] corner : body.vertices()) {
                double[] goal = Arrays.copyOf(corner, point.length);
                System.arraycopy(point, q, goal, q, processes);
                double[] next = between(point, goal, Math.min(1, step));
                double there = value.applyAsDouble(next);
                if (there > top) {
                    point = next;
                    top = there;
                }
            }
            step = top > before ? step : step / 2;
        }
        return point;
    }

    /** From one component to another, and each process variable up and down. */
    private static List<double[]> directions(int q, int length) {
        List<double[]> directions = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            for (int k = 0; k < q && i < q; k++) {
                if (k != i) {
                    double[] direction = new double[length];
                    direction[i] = 1;
                    direction[k] = -1;
                    directions.add(direction);
                }
            }
            if (i >= q) {
                double[] up = new double[length];
                up[i] = 1;
                double[] down = new double[length];
                down[i] = -1;
                directions.add(up);
                directions.add(down);
            }
        }
        return directions;
    }

    private static double[] moved(Polytope body, double[] point, double[] direction, double step, int q) {
        double[] mixture = Arrays.copyOf(point, q);
        double[] way = Arrays.copyOf(direction, q);
        boolean blend = Arrays.stream(way).anyMatch(one -> one != 0);
        double length = blend ? Math.min(step, body.reach(mixture, way)) : step;
        double[] next = point.clone();
        for (int i = 0; i < next.length; i++) {
            next[i] += length * direction[i];
            next[i] = i < q ? next[i] : Math.max(-1, Math.min(1, next[i]));
        }
        return next;
    }

    private static double[] between(double[] a, double[] b, double share) {
        double[] point = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            point[i] = a[i] + share * (b[i] - a[i]);
        }
        return point;
    }
}
