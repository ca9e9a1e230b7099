package stillroom.science.blend;

import java.util.Arrays;
import java.util.Optional;
import stillroom.science.blend.DualSimplex.Outcome;

/**
 * Solves a blend by rounds of search, each longer than the one before. What a round finds makes the next one smaller: with a
 * better blend at hand, the prices of the whole relaxation rule out ingredients, and the bounds of the others get narrower.
 */
final class Narrowing {
    private static final int MOST_ITERATIONS = 50_000;
    private static final long FIRST_ROUND = 60;
    /** The likeliest ingredients, and how long they are looked at alone. */
    private static final int SHORTLIST = 30;

    private static final long SHORTLIST_ROUND = 60;
    /** Narrower bounds cost two linear programmes per ingredient. */
    private static final int FEW = 100;

    private static final long LONGER = 4;
    /** Where a round leaves more than this share of the ingredients, the next one goes on to the end. */
    private static final double WORTH_IT = 0.8;

    private final Blend blend;
    private final Patience patience;
    private final Workings whole;
    private final Decisions first;
    private Optional<Incumbent.Found> best = Optional.empty();
    private long nodes;
    /** What all rounds have proven: a later one begins anew, but what an earlier one knew stays true. */
    private double proven = Double.NEGATIVE_INFINITY;

    Narrowing(Blend blend, Patience patience) {
        this.blend = blend;
        this.patience = patience;
        this.whole = new Workings(blend);
        this.first = Decisions.first(blend);
    }

    Searched run() {
        if (blend.size() > 2 * SHORTLIST && solvedWhole() && !whole.stands(whole.relaxation.fractions(whole.simplex))) {
            proven = whole.objective();
            round(shortlist(), SHORTLIST_ROUND, false);
        }
        Part part = Part.of(blend, j -> true);
        Searched searched = search(part, FIRST_ROUND);
        long most = FIRST_ROUND;
        while (searched.stopped() && searched.nodes() >= most) {
            Part smaller = narrowed();
            if (smaller.from().isEmpty()) {
                return new Searched(best, objective(), nodes, false);
            }
            boolean worthIt = smaller.from().size() < WORTH_IT * part.from().size();
            most = worthIt && most < 100 * FIRST_ROUND ? LONGER * most : Long.MAX_VALUE;
            part = smaller;
            searched = search(part, most);
        }
        return new Searched(best, Math.min(objective(), searched.bound()), nodes, searched.stopped());
    }

    /** Those that the prices of the whole relaxation make the likeliest: a good blend of theirs spares much of what follows. */
    private Part shortlist() {
        double[] lift = new double[blend.size()];
        for (int j = 0; j < lift.length; j++) {
            boolean used = whole.relaxation.fraction(whole.simplex, j) > Workings.NOTHING || first.used(j);
            lift[j] = used ? Double.NEGATIVE_INFINITY : whole.simplex.reducedCost(whole.relaxation.below(j));
        }
        double[] sorted = lift.clone();
        Arrays.sort(sorted);
        return Part.of(blend, j -> lift[j] <= sorted[SHORTLIST - 1]);
    }

    /** The ingredients that a better blend might use, with the bounds between which it might use them. */
    private Part narrowed() {
        Decisions decided = first.copy();
        if (best.isPresent() && solvedWhole()) {
            double room = Incumbent.cutoff(objective()) - whole.objective();
            new Fixing(blend, whole.relaxation).decide(decided, whole.simplex, room);
        }
        Part part = Part.of(blend, j -> !decided.absent(j));
        if (best.isEmpty() || part.from().size() > FEW) {
            return part;
        }
        Part tight = part.with(new Tightening(part.blend(), Incumbent.cutoff(objective()) - part.offset()).narrowed());
        return tight.without(j -> tight.blend().ingredients().get(j).most() == 0);
    }

    private boolean solvedWhole() {
        return whole.solve(first, whole.simplex.basis(), Double.POSITIVE_INFINITY, MOST_ITERATIONS) == Outcome.OPTIMAL;
    }

    private double objective() {
        return best.map(Incumbent.Found::objective).orElse(Double.POSITIVE_INFINITY);
    }

    /** Searches a part that may hold each better blend; what it proves is proven. */
    private Searched search(Part part, long mostNodes) {
        Searched searched = round(part, mostNodes, true);
        proven = Math.max(proven, searched.bound() + part.offset());
        return new Searched(best, proven, searched.nodes(), searched.stopped());
    }

    /**
     * Searches a part for something better than the best, and takes that over.
     *
     * @param bounding whether the bound of the part is one of the whole
     */
    private Searched round(Part part, long mostNodes, boolean bounding) {
        long before = nodes;
        Patience shared = progress -> progress.nodes() >= mostNodes
                || patience.isOver(new Progress(
                        Math.min(objective(), progress.best() + part.offset()),
                        bounding ? Math.max(proven, progress.bound() + part.offset()) : proven,
                        before + progress.nodes()));
        Searched searched =
                new Search(part.blend(), whole.dominance.of(part.from()), shared, objective() - part.offset()).run();
        nodes += searched.nodes();
        searched.best()
                .map(part::whole)
                .filter(found -> found.objective() < objective())
                .ifPresent(found -> best = Optional.of(found));
        return searched;
    }
}
