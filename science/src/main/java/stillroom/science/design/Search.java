package stillroom.science.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Looks for the best design of a ground: exchanges among candidates from many starts, the best ones refined off the
 * candidates, their new points made candidates in turn, and so on until nothing has come of it for long. Not safe for use by
 * two threads.
 */
final class Search {
    private static final double EQUAL = 1e-9;

    private final Ground ground;
    private final SplittableRandom random;
    private final long budget;
    private final BooleanSupplier stop;
    private final List<double[]> candidates;
    private List<double[]> best = List.of();
    private double bestScore = Double.NEGATIVE_INFINITY;
    private int starts;
    private int idle;
    private long work;

    Search(Ground ground, long seed, long budget, BooleanSupplier stop) {
        this.ground = ground;
        this.random = new SplittableRandom(seed);
        this.budget = budget;
        this.stop = stop;
        this.candidates = new ArrayList<>(new Shortlist(ground.space(), random, stop).foremost());
    }

    List<double[]> best() {
        return best;
    }

    double bestScore() {
        return bestScore;
    }

    MixtureDesign.Effort effort() {
        return new MixtureDesign.Effort(candidates.size(), starts, work, over());
    }

    private boolean over() {
        return work >= budget || stop.getAsBoolean();
    }

    /** A design of candidate numbers. */
    private record Kept(double score, int[] design) {}

    /** @return whether any design was found that is not singular */
    boolean run() {
        for (int round = 0; round == 0 || (!over() && idle < 3); round++) {
            double before = bestScore;
            List<Kept> kept = exchange();
            if (kept.isEmpty()) {
                return !best.isEmpty();
            }
            refine(kept);
            idle = bestScore > before + EQUAL * Math.max(1, Math.abs(before)) ? 0 : idle + 1;
        }
        polish();
        return !best.isEmpty();
    }

    private List<Kept> exchange() {
        Exchange exchange = new Exchange(ground, candidates, random);
        long until = work + Math.max(budget / 6, 1);
        List<Kept> kept = new ArrayList<>();
        int round = 0;
        int unfruitful = 0;
        int runs = ground.freshCount();
        do {
            if (round < 3 || kept.isEmpty() || random.nextInt(3) == 0) {
                exchange.begin();
            } else {
                exchange.shake(
                        kept.get(random.nextInt(Math.min(3, kept.size()))).design(),
                        1 + random.nextInt(Math.max(2, runs / 3)));
            }
            starts++;
            round++;
            if (exchange.climb()) {
                unfruitful = offer(kept, new Kept(exchange.score(), exchange.chosen())) ? 0 : unfruitful + 1;
            }
        } while (work + exchange.work() < Math.min(until, budget) && unfruitful < 150 && !stop.getAsBoolean());
        work += exchange.work();
        return kept;
    }

    /** @return whether it is among the best few, and new */
    private boolean offer(List<Kept> kept, Kept one) {
        double tolerance = EQUAL * Math.max(1, Math.abs(one.score()));
        if (kept.stream().anyMatch(other -> Math.abs(other.score() - one.score()) < tolerance)) {
            return false;
        }
        kept.add(one);
        kept.sort(Comparator.comparingDouble(Kept::score).reversed());
        if (kept.size() > 12) {
            return kept.remove(12) != one;
        }
        return true;
    }

    private void refine(List<Kept> kept) {
        long until = work + budget / 8;
        for (int k = 0; k < kept.size() && (k == 0 || (work < until && !over())); k++) {
            List<double[]> points = new ArrayList<>();
            for (int candidate : kept.get(k).design()) {
                points.add(candidates.get(candidate));
            }
            climb(points, 1e-6, k == 0 ? 12 : 6);
        }
        best.forEach(this::addCandidate);
    }

    private void climb(List<double[]> points, double worth, int sweeps) {
        Refinement refinement = new Refinement(ground, points, random);
        long start = work;
        double score = refinement.climb(worth, sweeps, () -> start + refinement.work() > budget || stop.getAsBoolean());
        work += refinement.work();
        if (score > bestScore) {
            bestScore = score;
            best = refinement.points();
        }
    }

    private void polish() {
        Refinement refinement = new Refinement(ground, best, random);
        double score = refinement.climb(1e-13, 40, () -> refinement.work() > budget / 4 || stop.getAsBoolean());
        work += refinement.work();
        if (score > bestScore) {
            bestScore = score;
            best = refinement.points();
        }
    }

    private void addCandidate(double[] point) {
        if (candidates.stream().noneMatch(other -> Candidates.same(other, point))) {
            candidates.add(point);
        }
    }
}
