package stillroom.science.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Looks for the best design of a ground: exchanges among candidates from many starts, the best ones refined off the
 * candidates, their new points made candidates in turn, and so on until nothing has come of it for long or the work allowed is
 * done. Not safe for use by two threads.
 */
final class Search {
    private static final double EQUAL = 1e-9;

    private final Ground ground;
    private final SplittableRandom random;
    private final long budget;
    private final BooleanSupplier enough;
    private final Meter meter;
    private final List<double[]> candidates;
    private List<double[]> best = List.of();
    private int[] incumbent = new int[0];
    private double bestScore = Double.NEGATIVE_INFINITY;
    private int starts;
    private int idle;

    Search(Ground ground, long seed, long budget, Meter meter) {
        this.ground = ground;
        this.random = new SplittableRandom(seed);
        this.budget = budget;
        this.meter = meter;
        this.enough = meter.after(budget);
        this.candidates = new ArrayList<>(new Shortlist(ground.space(), random, meter).foremost());
    }

    List<double[]> best() {
        return best;
    }

    double bestScore() {
        return bestScore;
    }

    MixtureDesign.Effort effort() {
        return new MixtureDesign.Effort(candidates.size(), starts, meter.spent(), enough.getAsBoolean());
    }

    private BooleanSupplier either(BooleanSupplier done) {
        return () -> done.getAsBoolean() || enough.getAsBoolean();
    }

    /** A design of candidate numbers. */
    private record Kept(double score, State state, int[] design) {}

    /** @return whether any design was found that is not singular */
    boolean run() {
        for (int round = 0; round == 0 || (!enough.getAsBoolean() && idle < 6); round++) {
            double before = bestScore;
            List<Kept> kept = exchange();
            if (kept.isEmpty()) {
                return !best.isEmpty();
            }
            widen(kept);
            refine(kept);
            idle = bestScore > before + EQUAL * Math.max(1, Math.abs(before)) ? 0 : idle + 1;
        }
        polish();
        return !best.isEmpty();
    }

    private List<Kept> exchange() {
        Exchange exchange = new Exchange(ground, candidates, random, meter);
        BooleanSupplier done = either(meter.after(budget / 5));
        List<Kept> kept = new ArrayList<>();
        int unfruitful = 0;
        int round = 0;
        do {
            boolean sound = started(exchange, kept, round++);
            starts++;
            if (sound && exchange.climb(kept.isEmpty() ? either(meter.after(budget / 2)) : done)) {
                unfruitful = offer(kept, new Kept(exchange.score(), exchange.state(), exchange.chosen()))
                        ? 0
                        : unfruitful + 1;
            }
        } while (!done.getAsBoolean() && unfruitful < 150);
        return kept;
    }

    /** Where the best design of earlier rounds is, then afresh, then mostly shaken. */
    private boolean started(Exchange exchange, List<Kept> kept, int round) {
        if (round == 0 && incumbent.length > 0) {
            return exchange.begin(incumbent);
        }
        boolean afresh = kept.isEmpty() || incumbent.length == 0 && round < 3 || random.nextInt(8) == 0;
        return afresh ? exchange.begin() : shaken(exchange, kept);
    }

    /** Mostly the best so far with a few runs thrown elsewhere, at times one of the next. */
    private boolean shaken(Exchange exchange, List<Kept> kept) {
        int which = random.nextInt(4) > 0 ? 0 : random.nextInt(Math.min(5, kept.size()));
        exchange.back(kept.get(which).state());
        exchange.shake(2 + random.nextInt(Math.max(2, Math.min(14, ground.freshCount() / 3))));
        return true;
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

    /** Lets the best designs take any candidate, also those that the shortlist lacks; what they take joins it. */
    private void widen(List<Kept> kept) {
        List<double[]> all = ground.space().candidates();
        if (all.size() <= candidates.size()) {
            return;
        }
        List<double[]> wide = new ArrayList<>(candidates);
        wide.addAll(all);
        Exchange exchange = new Exchange(ground, wide, random, meter);
        BooleanSupplier done = either(meter.after(budget / 12));
        for (int k = 0; k < Math.min(3, kept.size()) && !done.getAsBoolean(); k++) {
            if (exchange.begin(kept.get(k).design()) && exchange.climb(done)) {
                int[] design = exchange.chosen();
                for (int i = 0; i < design.length; i++) {
                    design[i] = design[i] < candidates.size() ? design[i] : addCandidate(wide.get(design[i]));
                }
                kept.set(k, new Kept(exchange.score(), kept.get(k).state(), design));
            }
        }
        kept.sort(Comparator.comparingDouble(Kept::score).reversed());
    }

    private void refine(List<Kept> kept) {
        BooleanSupplier done = either(meter.after(budget / 8));
        for (int k = 0; k < kept.size() && (k == 0 || !done.getAsBoolean()); k++) {
            List<double[]> points = new ArrayList<>();
            for (int candidate : kept.get(k).design()) {
                points.add(candidates.get(candidate));
            }
            climb(points, 1e-6, k == 0 ? 12 : 6, meter.after(budget / 3));
        }
        incumbent = best.stream().mapToInt(this::addCandidate).toArray();
    }

    private void climb(List<double[]> points, double worth, int sweeps, BooleanSupplier done) {
        Refinement refinement = new Refinement(ground, points, random, meter);
        double score = refinement.climb(worth, sweeps, done);
        if (score > bestScore) {
            bestScore = score;
            best = refinement.points();
        }
    }

    private void polish() {
        climb(best, 1e-13, 40, meter.after(budget / 8));
    }

    /** @return its number */
    private int addCandidate(double[] point) {
        for (int j = 0; j < candidates.size(); j++) {
            if (Candidates.same(candidates.get(j), point)) {
                return j;
            }
        }
        candidates.add(point);
        return candidates.size() - 1;
    }
}
