package stillroom.science.blend;

import java.util.stream.IntStream;
import stillroom.science.blend.DualSimplex.Outcome;

/**
 * Looks for a blend near the answer of a relaxation: keeps the largest fractions that the use limits allow, then lets the
 * remaining relaxation decide who is raised to the least dose and who goes.
 */
final class Rounding {
    private static final int MOST_ITERATIONS = 400;
    private static final int MOST_TURNS = 12;

    private final Workings workings;
    private final Incumbent incumbent;

    Rounding(Workings workings, Incumbent incumbent) {
        this.workings = workings;
        this.incumbent = incumbent;
    }

    void near(Decisions from, double[] fractions, Basis basis) {
        Decisions decisions = keepLargest(from, fractions);
        Basis start = basis;
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            if (workings.solve(decisions, start, incumbent.cutoff(), MOST_ITERATIONS) != Outcome.OPTIMAL) {
                return;
            }
            double[] now = workings.relaxation.fractions(workings.simplex);
            start = workings.simplex.basis();
            if (workings.stands(now)) {
                incumbent.settle(decisions, now, start);
                return;
            }
            if (!decideFurther(decisions, now)) {
                return;
            }
        }
    }

    private Decisions keepLargest(Decisions from, double[] fractions) {
        Decisions kept = from.copy();
        int[] left = workings.blend.useLimits().stream()
                .mapToInt(limit -> limit.atMost()
                        - (int) limit.of().stream().filter(from::used).count())
                .toArray();
        IntStream.range(0, fractions.length)
                .filter(from::undecided)
                .boxed()
                .sorted((one, other) -> Double.compare(weight(other, fractions), weight(one, fractions)))
                .forEach(j -> {
                    if (fractions[j] <= Workings.NOTHING || !take(j, left)) {
                        kept.leaveOut(j);
                    }
                });
        return kept;
    }

    /** How nearly it is used: by its fraction, and whether that reaches the least dose. */
    private double weight(int j, double[] fractions) {
        double least = workings.blend.ingredients().get(j).leastIfUsed();
        return least > 0 ? fractions[j] * Math.min(1, fractions[j] / least) : fractions[j];
    }

    private boolean take(int j, int[] left) {
        for (int g = 0; g < left.length; g++) {
            if (workings.blend.useLimits().get(g).of().contains(j) && left[g] <= 0) {
                return false;
            }
        }
        for (int g = 0; g < left.length; g++) {
            left[g] -= workings.blend.useLimits().get(g).of().contains(j) ? 1 : 0;
        }
        return true;
    }

    /** Raises the one that is nearest to its least dose, and leaves out those that are far from theirs. */
    private boolean decideFurther(Decisions decisions, double[] fractions) {
        int nearest = -1;
        double best = 0;
        for (int j = 0; j < fractions.length; j++) {
            if (decisions.undecided(j) && workings.belowLeast(j, fractions[j])) {
                double share =
                        fractions[j] / workings.blend.ingredients().get(j).leastIfUsed();
                if (share > best) {
                    best = share;
                    nearest = j;
                }
            }
        }
        if (nearest < 0) {
            return false;
        }
        if (best >= 0.4) {
            decisions.use(nearest);
        } else {
            decisions.leaveOut(nearest);
        }
        return true;
    }
}
