package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The candidates that matter, and a ceiling for D. Where there are many candidates, those are kept whose prediction variance
 * under a nearly optimal weighted design is largest; with their neighbours they hold all good exact designs as a rule. The
 * ceiling climbs from the best points along straight ways; it is searched, not proven, over the whole region.
 */
final class Shortlist {
    private static final int FEW = 150;
    private static final double ROUGHLY = 0.02;
    private static final double GOOD_ENOUGH = 0.002;

    private final DesignSpace space;
    private final SplittableRandom random;
    private final BooleanSupplier stop;
    private final List<double[]> points;

    Shortlist(DesignSpace space, SplittableRandom random, BooleanSupplier stop) {
        this.space = space;
        this.random = random;
        this.stop = stop;
        this.points = new ArrayList<>(space.candidates());
    }

    /** All candidates where they are few. */
    List<double[]> foremost() {
        int p = space.terms();
        int many = Math.max(FEW, 12 * p);
        if (points.size() <= many) {
            return points;
        }
        Bound bound = bound(start());
        bound.trade(ROUGHLY, 12, stop);
        return IntStream.of(bound.foremost(many)).mapToObj(points::get).toList();
    }

    private int[] start() {
        int p = space.terms();
        double[] base = new double[points.size() * p];
        for (int j = 0; j < points.size(); j++) {
            space.fill(points.get(j), base, j * p);
        }
        return new Beginning(base, points.size(), p, random).picks(p, 1);
    }

    private Bound bound(int[] start) {
        return new Bound(space, points, start, random);
    }

    /** The largest possible ln det(M) / p, in turned regressors. @param design a good one to start from */
    double ceiling(List<double[]> design) {
        int first = points.size();
        points.addAll(design);
        int[] start = IntStream.range(first, points.size()).toArray();
        double ceiling = Double.POSITIVE_INFINITY;
        int p = space.terms();
        boolean small = points.size() < FEW;
        for (int round = 0; round < (small ? 5 : 2) && (round == 0 || !stop.getAsBoolean()); round++) {
            Bound bound = bound(start);
            bound.trade(small ? 0 : GOOD_ENOUGH, small ? 60 : 20, () -> false);
            double onPoints = bound.ceiling();
            int[] climbs = bound.foremost(small ? 2 * p : p / 2);
            double beyond = new Steepest(space, bound.inverse(), random).from(points, climbs, stop) - p;
            start = bound.support();
            ceiling = Math.min(ceiling, Math.max(onPoints, bound.logMean() + beyond / p));
            if (bound.logMean() + beyond / p <= onPoints + 1e-9) {
                break;
            }
        }
        return ceiling;
    }
}
