package stillroom.science.design;

import java.util.List;

/** What every search of one task shares: the space, the blocks, the runs already made, and what is to be made small. */
final class Ground {
    private final DesignSpace space;
    private final Criterion criterion;
    private final double[][] blockCodes;
    private final int[] freshBlocks;
    private final double[] madeInformation;
    private final double[] moments;

    Ground(DesignTask task, DesignSpace space, double[] moments) {
        this.space = space;
        this.criterion = task.wishes().criterion();
        this.blockCodes = codes(task.totalBlocks());
        this.freshBlocks = blocks(task);
        this.moments = padded(moments, space.terms(), size());
        this.madeInformation = made(task.wishes().made());
    }

    /** Sum-to-zero columns: each block its own, the last one minus all. */
    private static double[][] codes(int blocks) {
        double[][] codes = new double[blocks][blocks - 1];
        for (int b = 0; b < blocks; b++) {
            for (int k = 0; k < blocks - 1; k++) {
                codes[b][k] = b == blocks - 1 ? -1 : b == k ? 1 : 0;
            }
        }
        return codes;
    }

    private static int[] blocks(DesignTask task) {
        int fresh = task.fresh();
        int groups = Math.max(1, task.wishes().blocks());
        int first = task.totalBlocks() - groups;
        int[] blocks = new int[fresh];
        for (int i = 0; i < fresh; i++) {
            blocks[i] = first + (int) ((long) i * groups / fresh);
        }
        return blocks;
    }

    private static double[] padded(double[] matrix, int small, int large) {
        double[] wide = new double[large * large];
        for (int i = 0; i < small && matrix.length > 0; i++) {
            System.arraycopy(matrix, i * small, wide, i * large, small);
        }
        return wide;
    }

    private double[] made(List<Run> runs) {
        double[] information = new double[size() * size()];
        for (Run run : runs) {
            Kernel.update(information, 1, row(run.point(), 0));
        }
        return information;
    }

    /** The regressors of a run: turned model terms, then the columns of its block. */
    double[] row(double[] point, int block) {
        double[] row = new double[size()];
        fill(point, block, row);
        return row;
    }

    void fill(double[] point, int block, double[] row) {
        space.fill(point, row, 0);
        System.arraycopy(blockCodes[block], 0, row, space.terms(), blockCodes[block].length);
    }

    DesignSpace space() {
        return space;
    }

    boolean isD() {
        return criterion == Criterion.D;
    }

    /** Terms and block columns. */
    int size() {
        return space.terms() + blockCodes.length - 1;
    }

    double[] blockCode(int block) {
        return blockCodes[block];
    }

    int blockCount() {
        return blockCodes.length;
    }

    int freshCount() {
        return freshBlocks.length;
    }

    /** Block of a new run, from 0. */
    int blockOf(int run) {
        return freshBlocks[run];
    }

    double[] madeInformation() {
        return madeInformation.clone();
    }

    double[] moments() {
        return moments;
    }

    /** Higher is better: ln det of the information, or minus the mean prediction variance. */
    double score(double[] inverse, double logDeterminant) {
        return isD() ? logDeterminant : -Kernel.trace(moments, inverse);
    }
}
