package stillroom.science.design;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Exchanges runs for candidates, each for the best one, with rank-one updates of the inverse information and of the
 * candidates' prediction variances. Not safe for use by two threads.
 *
 * <p>Source: fedorov-1972 and cook-1980 for the exchange; the formulas follow from det and inverse of a rank-two change.
 */
final class Exchange {
    private static final double WORTH = 1e-9;

    private final Ground ground;
    private final SplittableRandom random;
    private final Meter meter;
    private final int p;
    private final int e;
    private final int m;
    private final double[] base;
    private final int[] chosen;
    private final double[][] variance;
    private final double[][] spread;
    private final double[] cross;
    private final double[] crossSpread;
    private final double[] row;
    private final double[] u;
    private final double[] w;
    private double[] inverse = new double[0];
    private double[] smoothed = new double[0];
    private double logDeterminant;

    Exchange(Ground ground, List<double[]> candidates, SplittableRandom random, Meter meter) {
        this.ground = ground;
        this.random = random;
        this.meter = meter;
        p = ground.space().terms();
        e = ground.size();
        m = candidates.size();
        base = new double[m * p];
        for (int j = 0; j < m; j++) {
            ground.space().fill(candidates.get(j), base, j * p);
        }
        chosen = new int[ground.freshCount()];
        variance = new double[ground.blockCount()][m];
        spread = new double[ground.blockCount()][ground.isD() ? 0 : m];
        cross = new double[m];
        crossSpread = new double[m];
        row = new double[e];
        u = new double[e];
        w = new double[e];
    }

    int[] chosen() {
        return chosen.clone();
    }

    double score() {
        return ground.score(inverse, logDeterminant);
    }

    /** A fresh start: some runs at random, the others each where the information is poorest. */
    void begin() {
        Beginning beginning = new Beginning(base, m, p, random);
        int[] picks = beginning.picks(Math.min(chosen.length, p), random.nextInt(1, Math.max(2, p / 2 + 1)));
        meter.spend((long) picks.length * m * p * 2);
        int[] order = shuffled(chosen.length);
        for (int i = 0; i < chosen.length; i++) {
            chosen[order[i]] = i < picks.length ? picks[i] : random.nextInt(m);
        }
    }

    /** Throws some runs of a design elsewhere. */
    void shake(int[] design, int runs) {
        System.arraycopy(design, 0, chosen, 0, chosen.length);
        for (int k = 0; k < runs; k++) {
            chosen[random.nextInt(chosen.length)] = random.nextInt(m);
        }
    }

    /** Exchanges until nothing gains, or enough was done. @return false if the design is singular */
    boolean climb(BooleanSupplier enough) {
        boolean moved = true;
        for (int pass = 0; moved && pass < 60 && (pass == 0 || !enough.getAsBoolean()); pass++) {
            if (!refresh()) {
                return false;
            }
            moved = false;
            for (int i : shuffled(chosen.length)) {
                moved |= !enough.getAsBoolean() && improve(i);
            }
        }
        return refresh();
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

    private boolean refresh() {
        inverse = ground.madeInformation();
        for (int i = 0; i < chosen.length; i++) {
            load(chosen[i], ground.blockOf(i));
            Kernel.update(inverse, 1, row);
        }
        logDeterminant = Kernel.invert(inverse, e);
        if (logDeterminant == Double.NEGATIVE_INFINITY) {
            return false;
        }
        smoothed = ground.isD() ? inverse : Kernel.sandwich(inverse, ground.moments(), e);
        for (int b = 0; b < variance.length; b++) {
            forms(inverse, b, variance[b]);
            if (!ground.isD()) {
                forms(smoothed, b, spread[b]);
            }
        }
        meter.spend((long) chosen.length * e * e + (long) e * e * e + (long) variance.length * m * e * e / 2);
        return true;
    }

    private void forms(double[] matrix, int block, double[] into) {
        for (int j = 0; j < m; j++) {
            load(j, block);
            into[j] = Kernel.square(matrix, row);
        }
    }

    private void load(int candidate, int block) {
        System.arraycopy(base, candidate * p, row, 0, p);
        System.arraycopy(ground.blockCode(block), 0, row, p, e - p);
    }

    private boolean improve(int run) {
        int block = ground.blockOf(run);
        int old = chosen[run];
        load(old, block);
        Kernel.times(inverse, row, u);
        products(u, block, cross);
        if (!ground.isD()) {
            Kernel.times(smoothed, row, w);
            products(w, block, crossSpread);
        }
        int best = ground.isD() ? bestForDeterminant(block, old) : bestForSpread(block, old);
        if (best < 0) {
            return false;
        }
        change(best, block, 1);
        change(old, block, -1);
        chosen[run] = best;
        return true;
    }

    private int bestForDeterminant(int block, int old) {
        double[] d = variance[block];
        double keep = 1 - d[old];
        double most = 1 + WORTH;
        int best = -1;
        for (int j = 0; j < m; j++) {
            double ratio = (1 + d[j]) * keep + cross[j] * cross[j];
            if (ratio > most) {
                most = ratio;
                best = j;
            }
        }
        return best;
    }

    private int bestForSpread(int block, int old) {
        double[] d = variance[block];
        double[] s = spread[block];
        double keep = 1 - d[old];
        double most = WORTH * Kernel.trace(ground.moments(), inverse);
        int best = -1;
        for (int j = 0; j < m; j++) {
            double ratio = (1 + d[j]) * keep + cross[j] * cross[j];
            double gain =
                    ratio > 1e-6 ? (keep * s[j] + 2 * cross[j] * crossSpread[j] - (1 + d[j]) * s[old]) / ratio : 0;
            if (gain > most) {
                most = gain;
                best = j;
            }
        }
        return best;
    }

    /** One product per candidate in a block. */
    private void products(double[] vector, int block, double[] into) {
        double shift = 0;
        double[] code = ground.blockCode(block);
        for (int k = 0; k < code.length; k++) {
            shift += code[k] * vector[p + k];
        }
        for (int j = 0; j < m; j++) {
            double sum = shift;
            int at = j * p;
            for (int k = 0; k < p; k++) {
                sum += base[at + k] * vector[k];
            }
            into[j] = sum;
        }
        meter.spend((long) m * p);
    }

    /** Adds (sign 1) or takes away (sign -1) one run. */
    private void change(int candidate, int block, int sign) {
        load(candidate, block);
        Kernel.times(inverse, row, u);
        double pivot = 1 + sign * Kernel.dot(row, u);
        double factor = -sign / pivot;
        if (!ground.isD()) {
            changeSpread(factor);
        }
        Kernel.update(inverse, factor, u);
        logDeterminant += Math.log(pivot);
        for (int b = 0; b < variance.length; b++) {
            products(u, b, cross);
            double[] d = variance[b];
            for (int j = 0; j < m; j++) {
                d[j] += factor * cross[j] * cross[j];
            }
        }
    }

    private void changeSpread(double factor) {
        Kernel.times(smoothed, row, w);
        double weight = factor * factor * Kernel.dot(row, w);
        for (int b = 0; b < spread.length; b++) {
            products(u, b, cross);
            products(w, b, crossSpread);
            double[] s = spread[b];
            for (int j = 0; j < m; j++) {
                s[j] += 2 * factor * cross[j] * crossSpread[j] + weight * cross[j] * cross[j];
            }
        }
        Kernel.update(smoothed, 2 * factor, u, w);
        Kernel.update(smoothed, weight, u);
    }
}
