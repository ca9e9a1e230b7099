package stillroom.science.design;

import java.util.List;

/** How good finished runs are together. */
final class Quality {
    private final Ground ground;
    private final int n;
    private final double[] inverse;
    private final double logDeterminant;
    private final double logWithBlocks;
    private final double logBlocks;

    Quality(Ground ground, List<Run> runs) {
        this.ground = ground;
        int p = ground.space().terms();
        int e = ground.size();
        n = runs.size();
        double[] whole = new double[e * e];
        for (Run run : runs) {
            Kernel.update(whole, 1, ground.row(run.point(), run.block() - 1));
        }
        inverse = part(whole, e, 0, p);
        logDeterminant = Kernel.invert(inverse, p);
        double[] blocks = part(whole, e, p, e);
        logBlocks = e == p ? 0 : Kernel.invert(centred(blocks, runs, e - p), e - p);
        logWithBlocks = Kernel.invert(whole, e);
    }

    private static double[] part(double[] matrix, int size, int from, int to) {
        double[] part = new double[(to - from) * (to - from)];
        for (int i = from; i < to; i++) {
            System.arraycopy(matrix, i * size + from, part, (i - from) * (to - from), to - from);
        }
        return part;
    }

    /** Block columns about their means: the model contains the mean already. */
    private double[] centred(double[] blocks, List<Run> runs, int count) {
        double[] sum = new double[count];
        runs.forEach(run -> Kernel.add(sum, 1, ground.blockCode(run.block() - 1)));
        Kernel.update(blocks, -1.0 / n, sum);
        return blocks;
    }

    double d() {
        return Math.exp((logDeterminant + ground.space().logTurn())
                        / ground.space().terms())
                / n;
    }

    double meanVariance() {
        int p = ground.space().terms();
        double[] moments = part(ground.moments(), ground.size(), 0, p);
        return Kernel.trace(moments, inverse);
    }

    double blockEfficiency() {
        return Math.exp(
                (logWithBlocks - logDeterminant - logBlocks) / ground.space().terms());
    }
}
