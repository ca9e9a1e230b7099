package stillroom.science.design;

import java.util.SplittableRandom;

/** Picks candidates that are not singular together: some at random, then always the one farthest from the span of the rest. */
final class Beginning {
    private final double[] residual;
    private final int m;
    private final int p;
    private final SplittableRandom random;

    Beginning(double[] base, int m, int p, SplittableRandom random) {
        this.residual = base.clone();
        this.m = m;
        this.p = p;
        this.random = random;
    }

    int[] picks(int count, int atRandom) {
        int[] picks = new int[count];
        for (int k = 0; k < count; k++) {
            int pick = random.nextInt(m);
            if (k >= atRandom || size(pick) < 1e-8) {
                pick = farthest();
            }
            picks[k] = pick;
            project(pick);
        }
        return picks;
    }

    private double size(int j) {
        double sum = 0;
        for (int k = j * p; k < (j + 1) * p; k++) {
            sum += residual[k] * residual[k];
        }
        return sum;
    }

    private int farthest() {
        int best = 0;
        double most = -1;
        for (int j = 0; j < m; j++) {
            double size = size(j);
            if (size > most) {
                most = size;
                best = j;
            }
        }
        return best;
    }

    private void project(int pick) {
        double length = Math.sqrt(size(pick));
        if (!(length > 1e-12)) {
            return;
        }
        double[] direction = new double[p];
        for (int k = 0; k < p; k++) {
            direction[k] = residual[pick * p + k] / length;
        }
        for (int j = 0; j < m; j++) {
            double along = 0;
            for (int k = 0; k < p; k++) {
                along += residual[j * p + k] * direction[k];
            }
            for (int k = 0; k < p; k++) {
                residual[j * p + k] -= along * direction[k];
            }
        }
    }
}
