package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.Polytope;
import stillroom.science.mixture.Regressors;

/**
 * Where runs may lie, and the regressors there: in L-pseudocomponents, and turned so that the candidates' regressors are
 * about orthonormal, which keeps narrow regions well conditioned. A determinant changes by {@link #logTurn()} only.
 */
final class DesignSpace {
    private static final double DEPENDENT = 1e-9;

    private final Polytope polytope;
    private final Regressors regressors;
    private final int processes;
    private final int blendingDegree;
    private final double[] lower;
    private final double free;
    private final List<double[]> candidates;
    private final double[][] turn;
    private final double[] pseudo;
    private final double[] plain;

    DesignSpace(Polytope polytope, MixtureModel model) {
        this.polytope = polytope;
        this.regressors = new Regressors(model);
        this.processes = model.processes();
        this.blendingDegree = model.terms().stream()
                .mapToInt(term -> term.components().size())
                .max()
                .orElse(0);
        this.lower = polytope.region().lower().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        this.free = polytope.region().free();
        this.pseudo = new double[lower.length + processes];
        this.plain = new double[regressors.count()];
        this.candidates = new ArrayList<>(Candidates.of(polytope, model));
        this.turn = free > 0 ? orthogonal() : new double[0][];
    }

    /** Whether the region is wide enough to tell the terms of the model apart. */
    boolean tellsTermsApart() {
        return turn.length == terms();
    }

    int terms() {
        return regressors.count();
    }

    int degree() {
        return regressors.degree();
    }

    /** The largest number of components in one term. */
    int blendingDegree() {
        return blendingDegree;
    }

    int components() {
        return lower.length;
    }

    Polytope polytope() {
        return polytope;
    }

    /** Fractions, then process variables. */
    List<double[]> candidates() {
        return candidates;
    }

    /** R, by which plain regressors are turned ones: plain = turned · R. */
    double[][] turn() {
        return turn;
    }

    /** ln det(X'X) less ln det of the turned one. */
    double logTurn() {
        double sum = 0;
        for (int i = 0; i < turn.length; i++) {
            sum += 2 * Math.log(turn[i][i]);
        }
        return sum;
    }

    /** Regressors in L-pseudocomponents, as the definition of D wants them. */
    void plain(double[] point, double[] into) {
        pseudo(point);
        regressors.fill(pseudo, into);
    }

    private void pseudo(double[] point) {
        for (int i = 0; i < pseudo.length; i++) {
            pseudo[i] = i < lower.length ? (point[i] - lower[i]) / free : point[i];
        }
    }

    /** The turned regressors of a point. */
    void fill(double[] point, double[] into, int offset) {
        plain(point, plain);
        int p = plain.length;
        for (int i = 0; i < p; i++) {
            double sum = plain[i];
            for (int k = 0; k < i; k++) {
                sum -= turn[k][i] * into[offset + k];
            }
            into[offset + i] = sum / turn[i][i];
        }
    }

    /** The slope along each fraction of Σ weight·(turned regressor) at a point; process variables stay. */
    double[] slopes(double[] point, double[] weights) {
        int p = plain.length;
        double[] unturned = java.util.Arrays.copyOf(weights, p);
        for (int i = p - 1; i >= 0; i--) {
            unturned[i] /= turn[i][i];
            for (int k = 0; k < i; k++) {
                unturned[k] -= turn[k][i] * unturned[i];
            }
        }
        pseudo(point);
        double[] slopes = new double[pseudo.length];
        regressors.slopes(pseudo, unturned, slopes);
        double[] mixture = java.util.Arrays.copyOf(slopes, lower.length);
        for (int i = 0; i < mixture.length; i++) {
            mixture[i] /= free;
        }
        return mixture;
    }

    /** R of a QR decomposition of the candidates' regressors, by modified Gram-Schmidt; empty where they depend on each other. */
    private double[][] orthogonal() {
        int p = regressors.count();
        double[][] columns = new double[p][candidates.size()];
        for (int j = 0; j < candidates.size(); j++) {
            plain(candidates.get(j), plain);
            for (int i = 0; i < p; i++) {
                columns[i][j] = plain[i];
            }
        }
        double[][] r = new double[p][p];
        for (int k = 0; k < p; k++) {
            double before = norm(columns[k]);
            for (int i = 0; i < k; i++) {
                r[i][k] = Kernel.dot(columns[i], columns[k]);
                Kernel.add(columns[k], -r[i][k], columns[i]);
            }
            r[k][k] = norm(columns[k]);
            if (!(r[k][k] > DEPENDENT * before)) {
                return new double[0][];
            }
            for (int j = 0; j < columns[k].length; j++) {
                columns[k][j] /= r[k][k];
            }
        }
        return r;
    }

    private static double norm(double[] column) {
        return Math.sqrt(Kernel.dot(column, column));
    }
}
