package stillroom.science.design;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** Looks for the largest prediction variance over the region by climbing along straight ways. */
final class Steepest {
    private final DesignSpace space;
    private final Meter meter;
    private final double[] inverse;
    private final Stretch stretch;
    private final Walk walk;
    private final double[] row;

    Steepest(DesignSpace space, double[] inverse, SplittableRandom random, Meter meter) {
        this.space = space;
        this.meter = meter;
        this.inverse = inverse;
        this.stretch = new Stretch(space.degree(), space.terms());
        this.walk = new Walk(space.polytope(), random);
        this.row = new double[space.terms()];
    }

    /** Climbs from some of the points; tops above all the others join them. @return the largest variance found */
    double from(List<double[]> points, int[] some, BooleanSupplier enough) {
        double most = 0;
        int p = space.terms();
        for (int j : some) {
            if (enough.getAsBoolean()) {
                return most;
            }
            double[] top = climb(points.get(j));
            double variance = at(top);
            most = Math.max(most, variance);
            if (variance > p * (1 + 1e-9) && points.stream().noneMatch(other -> Candidates.same(other, top))) {
                points.add(top);
            }
        }
        return most;
    }

    private double at(double[] point) {
        space.fill(point, row, 0);
        return Kernel.square(inverse, row);
    }

    private double[] climb(double[] start) {
        double[] point = start;
        double variance = at(start);
        for (int round = 0; round < 6; round++) {
            double before = variance;
            for (Walk.Aim aim : walk.aims(mixture(point))) {
                double[] next = along(point, aim);
                double reached = at(next);
                if (reached > variance) {
                    point = next;
                    variance = reached;
                }
            }
            if (variance - before < 1e-10 * space.terms()) {
                break;
            }
        }
        return point;
    }

    private double[] mixture(double[] point) {
        return Arrays.copyOf(point, space.components());
    }

    private double[] along(double[] point, Walk.Aim aim) {
        return walk.way(mixture(point), aim)
                .map(way -> {
                    for (int k = 0; k < stretch.nodes().length; k++) {
                        space.fill(there(point, way, stretch.places()[k]), stretch.nodes()[k], 0);
                    }
                    double[][] table = stretch.form(inverse);
                    meter.spend((long) (stretch.nodes().length * 2) * row.length * row.length);
                    return there(point, way, stretch.best(weights -> Stretch.square(table, weights)));
                })
                .orElse(point);
    }

    private static double[] there(double[] point, Walk.Way way, double place) {
        double[] there = way.at(place, point.length);
        System.arraycopy(point, way.from().length, there, way.from().length, point.length - way.from().length);
        return there;
    }
}
