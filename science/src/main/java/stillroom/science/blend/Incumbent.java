package stillroom.science.blend;

import java.util.Optional;
import stillroom.science.blend.DualSimplex.Outcome;

/** The best blend found so far, and from where on nothing better is worth looking for. */
final class Incumbent {
    /** Proven optimal means: no blend is better by more than this, relative to an objective above 1. */
    static final double PROOF_GAP = 1e-9;

    private static final int MOST_ITERATIONS = 2_000;

    private final Workings workings;
    private final double known;
    private Optional<Found> best = Optional.empty();

    record Found(double objective, Mix mix) {}

    /** @param known objective of a blend that is at hand elsewhere; positive infinity where there is none */
    Incumbent(Workings workings, double known) {
        this.workings = workings;
        this.known = known;
    }

    Optional<Found> best() {
        return best;
    }

    boolean atHand() {
        return objective() < Double.POSITIVE_INFINITY;
    }

    double objective() {
        return best.map(Found::objective).orElse(known);
    }

    /** A bound above this proves that nothing better lies below a node. */
    double cutoff() {
        return cutoff(objective());
    }

    static double cutoff(double objective) {
        return Double.isInfinite(objective)
                ? objective
                : objective - 0.5 * PROOF_GAP * Math.max(1, Math.abs(objective));
    }

    /** Decides everything as the fractions say, solves that exactly, and keeps it where it is better. */
    boolean settle(Decisions from, double[] fractions, Basis basis) {
        Decisions all = from.copy();
        for (int j = 0; j < fractions.length; j++) {
            if (all.undecided(j)) {
                if (fractions[j] > Workings.NOTHING) {
                    all.use(j);
                } else {
                    all.leaveOut(j);
                }
            }
        }
        if (workings.solve(all, basis, Double.POSITIVE_INFINITY, MOST_ITERATIONS) != Outcome.OPTIMAL) {
            return false;
        }
        double[] exact = workings.relaxation.fractions(workings.simplex);
        for (int j = 0; j < exact.length; j++) {
            // The rounding of a 0 would be paid for as an ingredient that is used.
            exact[j] = all.absent(j) ? 0 : exact[j];
        }
        double objective = workings.blend.cost(exact);
        if (objective < objective()) {
            best = Optional.of(new Found(objective, Mix.of(workings, exact)));
        }
        return true;
    }
}
