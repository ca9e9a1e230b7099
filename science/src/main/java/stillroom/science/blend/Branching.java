package stillroom.science.blend;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import stillroom.science.blend.DualSimplex.Outcome;

/**
 * Chooses the ingredient to decide next: the one whose two sides both lift the bound most. Sides are tried out by a few
 * simplex steps until their past lifts tell enough (reliability branching).
 *
 * <p>Source: achterberg-2005.
 */
final class Branching {
    private static final int RELIABLE = 1;
    private static final int TRIED_OUT = 12;
    private static final int TRIAL_ITERATIONS = 30;
    private static final double LEAST_LIFT = 1e-6;

    private final Workings workings;
    private final Lifts without;
    private final Lifts with;

    /** What to decide, and the bounds on both sides; positive infinity where a side holds nothing of use. */
    record Choice(int ingredient, double boundWithout, double boundWith) {}

    Branching(Workings workings) {
        this.workings = workings;
        this.without = new Lifts(workings.blend.size());
        this.with = new Lifts(workings.blend.size());
    }

    Choice choose(Node node, double[] fractions, double bound, Basis basis, double cutoff) {
        List<Integer> ranked = candidates(node.decisions(), fractions).stream()
                .sorted((one, other) ->
                        Double.compare(expected(other, fractions[other]), expected(one, fractions[one])))
                .toList();
        Choice best = new Choice(-1, bound, bound);
        double bestScore = -1;
        int tried = 0;
        for (int j : ranked) {
            Choice choice = new Choice(j, bound, bound);
            double score = expected(j, fractions[j]);
            if (tried < TRIED_OUT && !(without.known(j) && with.known(j))) {
                choice = tryOut(node, j, fractions[j], bound, basis, cutoff);
                score = score(choice.boundWithout() - bound, choice.boundWith() - bound);
                tried++;
            }
            if (score > bestScore) {
                best = choice;
                bestScore = score;
            }
            if (choice.boundWithout() == Double.POSITIVE_INFINITY || choice.boundWith() == Double.POSITIVE_INFINITY) {
                return choice;
            }
        }
        return best;
    }

    /** Undecided ingredients that stand between absent and used. */
    private List<Integer> candidates(Decisions decisions, double[] fractions) {
        boolean[] crowded = new boolean[fractions.length];
        for (UseLimit limit : workings.blend.useLimits()) {
            if (workings.exceeds(limit, fractions)) {
                limit.of().forEach(j -> crowded[j] = true);
            }
        }
        return IntStream.range(0, fractions.length)
                .filter(j -> decisions.undecided(j) && fractions[j] > Workings.NOTHING)
                .filter(j -> crowded[j]
                        || workings.belowLeast(j, fractions[j])
                        || workings.blend.ingredients().get(j).cost().whenUsed() > 0)
                .boxed()
                .toList();
    }

    private Choice tryOut(Node node, int j, double fraction, double bound, Basis basis, double cutoff) {
        double absent = side(workings.dominance.with(node.decisions(), j, false), bound, basis, cutoff);
        double used = side(workings.dominance.with(node.decisions(), j, true), bound, basis, cutoff);
        without.learn(j, absent - bound, fraction);
        with.learn(j, used - bound, missing(j, fraction));
        return new Choice(j, absent, used);
    }

    private double side(Decisions decisions, double bound, Basis basis, double cutoff) {
        Outcome outcome = workings.solve(decisions, basis, cutoff, TRIAL_ITERATIONS);
        return switch (outcome) {
            case INFEASIBLE, ABOVE_CUTOFF -> Double.POSITIVE_INFINITY;
            case OPTIMAL, STALLED -> Math.max(bound, workings.objective());
        };
    }

    private double expected(int j, double fraction) {
        return score(without.expected(j, fraction), with.expected(j, missing(j, fraction)));
    }

    /** How far a fraction is from being wholly used: what is missing of its least dose, and of its share of the count. */
    private double missing(int j, double fraction) {
        double least = workings.blend.ingredients().get(j).leastIfUsed();
        double ofLeast = least > 0 ? Math.max(0, 1 - fraction / least) : 0;
        double most = workings.relaxation.most(j);
        return ofLeast + Math.max(0, 1 - fraction / most);
    }

    private static double score(double one, double other) {
        return Math.max(one, other) + 0.1 * Math.min(one, other);
    }

    /** Mean lift of the bound per unit of distance, learned for each ingredient. */
    private static final class Lifts {
        private final double[] sum;
        private final int[] times;
        private double allSum;
        private int allTimes;

        Lifts(int count) {
            sum = new double[count];
            times = new int[count];
            Arrays.fill(times, 0);
        }

        void learn(int j, double lift, double distance) {
            if (Double.isFinite(lift) && distance > Workings.NOTHING) {
                sum[j] += lift / distance;
                times[j]++;
                allSum += lift / distance;
                allTimes++;
            }
        }

        boolean known(int j) {
            return times[j] >= RELIABLE;
        }

        double expected(int j, double distance) {
            double mean = times[j] > 0 ? sum[j] / times[j] : allTimes > 0 ? allSum / allTimes : 1;
            return mean * distance;
        }
    }
}
