package stillroom.science.design;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Exchanges runs for candidates, always the pair that gains most, with rank-one updates of everything that the next choice
 * needs. Not safe for use by two threads.
 *
 * <p>Source: fedorov-1972, and cook-1980 for its variants; the formulas follow from det and inverse of a rank-two change.
 */
final class Exchange {
    private static final double WORTH = 1e-9;
    private static final double SOUND = 0.02;
    private static final int CHANGES_BETWEEN = 100;

    private final Ground ground;
    private final SplittableRandom random;
    private final Meter meter;
    private final int p;
    private final int e;
    private final int m;
    private final Pool pool;
    private final double[] row;
    private final Step coming;
    private final Step going;
    private State now;
    private int since;

    /** The image of one point under a matrix, and its products with every candidate of every block. */
    private record Touch(double[] image, double[][] products) {
        static Touch of(Ground ground, int candidates) {
            return new Touch(new double[ground.size()], new double[ground.blockCount()][candidates]);
        }
    }

    /** What one point does to the information as it comes or goes. */
    private record Step(Touch plain, Touch smooth) {}

    Exchange(Ground ground, List<double[]> candidates, SplittableRandom random, Meter meter) {
        this.ground = ground;
        this.random = random;
        this.meter = meter;
        p = ground.space().terms();
        e = ground.size();
        m = candidates.size();
        pool = new Pool(ground.space(), candidates);
        meter.spend((long) m * p * p / 2);
        row = new double[e];
        coming = new Step(Touch.of(ground, m), Touch.of(ground, ground.isD() ? 0 : m));
        going = new Step(Touch.of(ground, m), Touch.of(ground, ground.isD() ? 0 : m));
        now = State.empty(ground, m);
    }

    int[] chosen() {
        return now.chosen().clone();
    }

    /** Where the exchange stands, to come back to. */
    State state() {
        return now.copy();
    }

    void back(State state) {
        now = state.copy();
    }

    double score() {
        return ground.score(now.inverse(), now.logDeterminant());
    }

    /** A fresh start: some runs at random, the others each where the information is poorest. @return false if singular */
    boolean begin() {
        int[] chosen = now.chosen();
        Beginning beginning = new Beginning(pool.rows(), m, p, random);
        int[] picks = beginning.picks(Math.min(chosen.length, p), random.nextInt(1, Math.max(2, p / 2 + 1)));
        meter.spend((long) picks.length * m * p * 2);
        int[] order = shuffled(chosen.length);
        for (int i = 0; i < chosen.length; i++) {
            chosen[order[i]] = i < picks.length ? picks[i] : random.nextInt(m);
        }
        return refresh();
    }

    /** Begins with a given design. @return false if singular */
    boolean begin(int[] design) {
        System.arraycopy(design, 0, now.chosen(), 0, design.length);
        return refresh();
    }

    /** Throws some runs elsewhere, where that keeps the terms apart. */
    void shake(int runs) {
        for (int k = 0; k < runs; k++) {
            int run = random.nextInt(now.chosen().length);
            double[] d = now.variance()[ground.blockOf(run)];
            for (int tries = 0; tries < 8; tries++) {
                int fresh = random.nextInt(m);
                double c = now.cross()[run][fresh];
                if ((1 + d[fresh]) * (1 - d[now.chosen()[run]]) + c * c > SOUND) {
                    replace(run, fresh);
                    break;
                }
            }
        }
    }

    /** Exchanges until nothing gains, or enough was done. @return false if the design is singular */
    boolean climb(BooleanSupplier enough) {
        for (int moves = 0; moves < 40 * now.chosen().length && !enough.getAsBoolean(); moves++) {
            if (!improve()) {
                return true;
            }
            if (since > CHANGES_BETWEEN && !refresh()) {
                return false;
            }
        }
        return true;
    }

    private int[] shuffled(int count) {
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            int k = random.nextInt(i + 1);
            order[i] = order[k];
            order[k] = i;
        }
        return order;
    }

    /** Computes the state anew, as updates gather rounding. */
    private boolean refresh() {
        int[] chosen = now.chosen();
        double[] inverse = ground.madeInformation();
        for (int i = 0; i < chosen.length; i++) {
            load(chosen[i], ground.blockOf(i));
            Kernel.update(inverse, 1, row);
        }
        double logDeterminant = Kernel.invert(inverse, e);
        if (logDeterminant == Double.NEGATIVE_INFINITY) {
            return false;
        }
        double[] smoothed = ground.isD() ? inverse : Kernel.sandwich(inverse, ground.moments(), e);
        now = now.with(inverse, smoothed, logDeterminant);
        fill(inverse, now.variance(), now.cross());
        if (!ground.isD()) {
            fill(smoothed, now.spread(), now.crossSpread());
        }
        meter.spend((long) chosen.length * e * e + (long) e * e * e);
        since = 0;
        return true;
    }

    private void fill(double[] matrix, double[][] squares, double[][] crosses) {
        for (int b = 0; b < squares.length; b++) {
            for (int j = 0; j < m; j++) {
                load(j, b);
                squares[b][j] = Kernel.square(matrix, row);
            }
        }
        double[] image = new double[e];
        for (int i = 0; i < crosses.length; i++) {
            load(now.chosen()[i], ground.blockOf(i));
            Kernel.times(matrix, row, image);
            pool.products(image, shift(image, ground.blockOf(i)), crosses[i]);
        }
        meter.spend((long) squares.length * m * e * e / 2 + (long) crosses.length * (m * p / 2 + e * e));
    }

    private void load(int candidate, int block) {
        pool.load(candidate, row);
        System.arraycopy(ground.blockCode(block), 0, row, p, e - p);
    }

    private double shift(double[] vector, int block) {
        double shift = 0;
        double[] code = ground.blockCode(block);
        for (int k = 0; k < code.length; k++) {
            shift += code[k] * vector[p + k];
        }
        return shift;
    }

    /** Makes the best exchange of all. */
    private boolean improve() {
        double most = ground.isD() ? 1 + WORTH : WORTH * Kernel.trace(ground.moments(), now.inverse());
        int run = -1;
        int candidate = -1;
        for (int i = 0; i < now.chosen().length; i++) {
            int j = ground.isD() ? bestForDeterminant(i, most) : bestForSpread(i, most);
            if (j >= 0) {
                most = ground.isD() ? determinantRatio(i, j) : spreadGain(i, j);
                run = i;
                candidate = j;
            }
        }
        meter.spend((long) now.chosen().length * m);
        if (run >= 0) {
            replace(run, candidate);
        }
        return run >= 0;
    }

    private double determinantRatio(int run, int j) {
        double[] d = now.variance()[ground.blockOf(run)];
        double c = now.cross()[run][j];
        return (1 + d[j]) * (1 - d[now.chosen()[run]]) + c * c;
    }

    private int bestForDeterminant(int run, double least) {
        double[] d = now.variance()[ground.blockOf(run)];
        double[] c = now.cross()[run];
        double keep = 1 - d[now.chosen()[run]];
        double most = least - keep;
        int best = -1;
        for (int j = 0; j < d.length; j++) {
            double ratio = keep * d[j] + c[j] * c[j];
            if (ratio > most) {
                most = ratio;
                best = j;
            }
        }
        return best;
    }

    private double spreadGain(int run, int j) {
        double[] d = now.variance()[ground.blockOf(run)];
        double[] s = now.spread()[ground.blockOf(run)];
        int old = now.chosen()[run];
        double c = now.cross()[run][j];
        double ratio = determinantRatio(run, j);
        return ratio > 1e-6
                ? ((1 - d[old]) * s[j] + 2 * c * now.crossSpread()[run][j] - (1 + d[j]) * s[old]) / ratio
                : 0;
    }

    private int bestForSpread(int run, double least) {
        double most = least;
        int best = -1;
        for (int j = 0; j < m; j++) {
            double gain = spreadGain(run, j);
            if (gain > most) {
                most = gain;
                best = j;
            }
        }
        meter.spend(2L * m);
        return best;
    }

    private void replace(int run, int candidate) {
        int block = ground.blockOf(run);
        Turn in = change(coming, candidate, block, 1);
        Turn out = change(going, now.chosen()[run], block, -1);
        now.chosen()[run] = candidate;
        for (int i = 0; i < now.chosen().length; i++) {
            if (i != run) {
                crosses(i, in, out);
            }
        }
        crossesOf(run);
        meter.spend((long) now.chosen().length * m / 2 * (ground.isD() ? 1 : 3));
        since++;
    }

    /** A change made, with the factors of its rank-one updates. */
    private record Turn(Step step, double factor, double weight) {}

    private void crosses(int run, Turn in, Turn out) {
        int block = ground.blockOf(run);
        int here = now.chosen()[run];
        double[] a = in.step().plain().products()[block];
        double[] b = out.step().plain().products()[block];
        Kernel.add(now.cross()[run], in.factor() * a[here], a, out.factor() * b[here], b);
        if (!ground.isD()) {
            spreadCrosses(now.crossSpread()[run], in, block, here);
            spreadCrosses(now.crossSpread()[run], out, block, here);
        }
    }

    private static void spreadCrosses(double[] to, Turn turn, int block, int here) {
        double[] a = turn.step().plain().products()[block];
        double[] w = turn.step().smooth().products()[block];
        Kernel.add(to, turn.factor() * a[here], w, turn.factor() * w[here] + turn.weight() * a[here], a);
    }

    /** The products of a run that has just come in. */
    private void crossesOf(int run) {
        int block = ground.blockOf(run);
        load(now.chosen()[run], block);
        double[] image = new double[e];
        Kernel.times(now.inverse(), row, image);
        pool.products(image, shift(image, block), now.cross()[run]);
        if (!ground.isD()) {
            Kernel.times(now.smoothed(), row, image);
            pool.products(image, shift(image, block), now.crossSpread()[run]);
        }
        meter.spend((long) m * p / 2 + (long) e * e);
    }

    /** Adds (sign 1) or takes away (sign -1) one run in the information and in the variances. */
    private Turn change(Step step, int candidate, int block, int sign) {
        load(candidate, block);
        touch(now.inverse(), step.plain());
        double pivot = 1 + sign * Kernel.dot(row, step.plain().image());
        double factor = -sign / pivot;
        double weight = ground.isD() ? 0 : changeSpread(step, factor);
        Kernel.update(now.inverse(), factor, step.plain().image());
        now = now.with(now.inverse(), now.smoothed(), now.logDeterminant() + Math.log(pivot));
        for (int b = 0; b < now.variance().length; b++) {
            squared(now.variance()[b], factor, step.plain().products()[b]);
        }
        meter.spend(2L * e * e);
        return new Turn(step, factor, weight);
    }

    private void touch(double[] matrix, Touch touch) {
        Kernel.times(matrix, row, touch.image());
        for (int b = 0; b < touch.products().length; b++) {
            pool.products(touch.image(), shift(touch.image(), b), touch.products()[b]);
        }
        meter.spend((long) touch.products().length * m * p / 2);
    }

    private static void squared(double[] to, double factor, double[] what) {
        for (int j = 0; j < to.length; j++) {
            to[j] += factor * what[j] * what[j];
        }
    }

    private double changeSpread(Step step, double factor) {
        touch(now.smoothed(), step.smooth());
        double weight = factor * factor * Kernel.dot(row, step.smooth().image());
        for (int b = 0; b < now.spread().length; b++) {
            double[] a = step.plain().products()[b];
            double[] w = step.smooth().products()[b];
            double[] s = now.spread()[b];
            for (int j = 0; j < m; j++) {
                s[j] += (2 * factor * w[j] + weight * a[j]) * a[j];
            }
        }
        Kernel.update(
                now.smoothed(), 2 * factor, step.plain().image(), step.smooth().image());
        Kernel.update(now.smoothed(), weight, step.plain().image());
        meter.spend(3L * e * e);
        return weight;
    }
}
