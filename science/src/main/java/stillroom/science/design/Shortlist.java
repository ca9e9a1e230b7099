package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * The candidates that matter, and a ceiling for D. Where there are many candidates, those are kept whose prediction variance
 * under a nearly optimal weighted design is largest; with their neighbours they hold all good exact designs as a rule. The
 * ceiling climbs from the best points along straight ways; it is searched, not proven, over the whole region.
 */
final class Shortlist {
    private static final int FEW = 150;
    private static final int MANY = 750;
    private static final double ROUGHLY = 0.02;
    private static final double GOOD_ENOUGH = 0.002;

    private final DesignSpace space;
    private final SplittableRandom random;
    private final Meter meter;

    Shortlist(DesignSpace space, SplittableRandom random, Meter meter) {
        this.space = space;
        this.random = random;
        this.meter = meter;
    }

    /** All candidates where they are few. */
    List<double[]> foremost() {
        List<double[]> points = space.candidates();
        int p = space.terms();
        int many = Math.max(FEW, Math.min(24 * p, Math.min(MANY, 2 * FEW + 12 * p)));
        if (points.size() <= many) {
            return points;
        }
        Bound bound = new Bound(space, points, start(points), random, meter);
        bound.trade(ROUGHLY, 12, meter::over);
        return IntStream.of(bound.foremost(many)).mapToObj(points::get).toList();
    }

    private int[] start(List<double[]> points) {
        int p = space.terms();
        double[] base = new double[points.size() * p];
        for (int j = 0; j < points.size(); j++) {
            space.fill(points.get(j), base, j * p);
        }
        meter.spend((long) p * p * points.size() * 2);
        return new Beginning(base, points.size(), p, random).picks(p, 1);
    }

    /**
     * The largest possible ln det(M) / p, in turned regressors; infinite where it was stopped before it knew.
     *
     * @param design a good one to start from
     */
    double ceiling(List<double[]> design) {
        List<double[]> points = new ArrayList<>(space.candidates());
        int first = points.size();
        points.addAll(design);
        int[] start = IntStream.range(first, points.size()).toArray();
        double ceiling = Double.POSITIVE_INFINITY;
        int p = space.terms();
        boolean small = points.size() < FEW;
        for (int round = 0; round < (small ? 5 : 1) && (round == 0 || !meter.over()); round++) {
            Bound bound = new Bound(space, points, start, random, meter);
            bound.trade(
                    small ? 0 : GOOD_ENOUGH, small ? 60 : 20, small ? meter::over : meter.after(2 * meter.limit() / 3));
            double onPoints = bound.ceiling();
            int[] climbs = bound.foremost(small ? 2 * p : p / 3);
            double beyond = new Steepest(space, bound.inverse(), random, meter).from(points, climbs, meter::over) - p;
            start = bound.support();
            ceiling = Math.min(ceiling, Math.max(onPoints, bound.logMean() + beyond / p));
            if (bound.logMean() + beyond / p <= onPoints + 1e-9) {
                break;
            }
        }
        return ceiling;
    }

    /**
     * What the mean variance of no weighted design is below, times the number of runs: φ²/max ψ for the best weights found, with
     * φ = tr(W M⁻¹) and ψ(x) = x'M⁻¹WM⁻¹x, as φ is convex and falls as 1/M. Weights are raised where ψ is large.
     *
     * @param design a good one to start from
     * @param moments W, in turned regressors
     */
    double floor(List<double[]> design, double[] moments) {
        List<double[]> points = new ArrayList<>(foremost());
        points.addAll(design);
        Weighing weighing = new Weighing(space, points, moments, meter);
        weighing.weigh(GOOD_ENOUGH, 300);
        List<double[]> all = new ArrayList<>(space.candidates());
        all.addAll(points);
        double[] smoothed = weighing.smoothed();
        double most = weighing.largest(all, smoothed);
        int[] climbs = weighing.support();
        Steepest steepest = new Steepest(space, smoothed, random, meter);
        return weighing.floor(Math.max(most, steepest.from(points, climbs, meter::over)));
    }
}
