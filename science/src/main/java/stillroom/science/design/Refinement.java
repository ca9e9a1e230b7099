package stillroom.science.design;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** Moves the runs of a design off the candidates, each along straight ways within the region, until nothing gains. */
final class Refinement {
    private static final double WORTH = 1e-13;
    private static final int WAYS = 4;

    private final Ground ground;
    private final Meter meter;
    private final Walk walk;
    private final Stretch stretch;
    private final double[][] points;
    private final double[][] rows;
    private final double[] image;
    private final double[] smoothedImage;
    private double[] inverse = new double[0];
    private double[] smoothed = new double[0];
    private double logDeterminant;

    Refinement(Ground ground, List<double[]> design, SplittableRandom random, Meter meter) {
        this.ground = ground;
        this.meter = meter;
        this.walk = new Walk(ground.space().polytope(), random);
        this.stretch = new Stretch(ground.space().degree(), ground.size());
        this.points = design.stream().map(double[]::clone).toArray(double[][]::new);
        this.rows = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            rows[i] = ground.row(points[i], ground.blockOf(i));
        }
        this.image = new double[ground.size()];
        this.smoothedImage = new double[ground.size()];
    }

    List<double[]> points() {
        return List.of(points);
    }

    /** @return the score reached */
    double climb(double gainWorth, int sweeps, BooleanSupplier stop) {
        refresh();
        double before = ground.score(inverse, logDeterminant);
        for (int sweep = 0; sweep < sweeps && !stop.getAsBoolean(); sweep++) {
            for (int i = 0; i < points.length && !stop.getAsBoolean(); i++) {
                improve(i);
            }
            refresh();
            double now = ground.score(inverse, logDeterminant);
            double worth = gainWorth * (ground.isD() ? 1 : Math.abs(now));
            if (now - before < worth) {
                return now;
            }
            before = now;
        }
        return before;
    }

    private void refresh() {
        inverse = ground.madeInformation();
        for (double[] row : rows) {
            Kernel.update(inverse, 1, row);
        }
        logDeterminant = Kernel.invert(inverse, ground.size());
        smoothed = ground.isD() ? inverse : Kernel.sandwich(inverse, ground.moments(), ground.size());
        long e = ground.size();
        meter.spend(rows.length * e * e + e * e * e * (ground.isD() ? 1 : 3));
    }

    /** Tries the steepest ways first, and only those that climb. */
    private void improve(int run) {
        Kernel.times(ground.isD() ? inverse : smoothed, rows[run], image);
        double[] slopes = ground.space().slopes(points[run], image);
        meter.spend(2L * ground.size() * ground.size());
        walk.steepest(mixture(run), slopes, WAYS).forEach(way -> along(run, way));
    }

    private double[] mixture(int run) {
        return Arrays.copyOf(points[run], ground.space().components());
    }

    /** Moves a run to the best place of a way, if that gains. */
    private void along(int run, Walk.Way way) {
        int length = points[run].length;
        for (int k = 0; k < stretch.nodes().length; k++) {
            ground.fill(place(way, stretch.places()[k], run, length), ground.blockOf(run), stretch.nodes()[k]);
        }
        Stretch.Gain gain = ground.isD() ? determinantGain(run) : spreadGain(run);
        double best = stretch.best(gain);
        meter.spend((long) stretch.nodes().length * 3 / 2 * ground.size() * ground.size());
        double reached = stretch.value(gain, best);
        double worth = ground.isD() ? 1 + WORTH : WORTH * Math.abs(ground.score(inverse, logDeterminant));
        if (reached > worth) {
            move(run, place(way, best, run, length));
        }
    }

    private double[] place(Walk.Way way, double place, int run, int length) {
        double[] point = way.at(place, length);
        System.arraycopy(points[run], way.from().length, point, way.from().length, length - way.from().length);
        return point;
    }

    private Stretch.Gain determinantGain(int run) {
        Kernel.times(inverse, rows[run], image);
        double keep = 1 - Kernel.dot(rows[run], image);
        double[][] table = stretch.form(inverse);
        double[] cross = stretch.products(image);
        return weights -> {
            double c = Kernel.dot(cross, weights);
            return (1 + Stretch.square(table, weights)) * keep + c * c;
        };
    }

    private Stretch.Gain spreadGain(int run) {
        Kernel.times(inverse, rows[run], image);
        Kernel.times(smoothed, rows[run], smoothedImage);
        double keep = 1 - Kernel.dot(rows[run], image);
        double old = Kernel.dot(rows[run], smoothedImage);
        double[][] table = stretch.form(inverse);
        double[][] spread = stretch.form(smoothed);
        double[] cross = stretch.products(image);
        double[] crossSpread = stretch.products(smoothedImage);
        return weights -> {
            double d = 1 + Stretch.square(table, weights);
            double c = Kernel.dot(cross, weights);
            double ratio = d * keep + c * c;
            double s = Stretch.square(spread, weights);
            return ratio > 1e-9
                    ? (keep * s + 2 * c * Kernel.dot(crossSpread, weights) - d * old) / ratio
                    : Double.NEGATIVE_INFINITY;
        };
    }

    private void move(int run, double[] point) {
        double[] row = ground.row(point, ground.blockOf(run));
        boolean sound = change(row, 1) && change(rows[run], -1);
        points[run] = point;
        rows[run] = row;
        if (!sound) {
            refresh();
        }
    }

    private boolean change(double[] row, int sign) {
        Kernel.times(inverse, row, image);
        double pivot = 1 + sign * Kernel.dot(row, image);
        double factor = -sign / pivot;
        if (!ground.isD()) {
            Kernel.times(smoothed, row, smoothedImage);
            double weight = factor * factor * Kernel.dot(row, smoothedImage);
            Kernel.update(smoothed, 2 * factor, image, smoothedImage);
            Kernel.update(smoothed, weight, image);
        }
        Kernel.update(inverse, factor, image);
        logDeterminant += Math.log(pivot);
        meter.spend(4L * row.length * row.length);
        return pivot > 1e-6;
    }
}
