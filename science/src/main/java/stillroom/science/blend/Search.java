package stillroom.science.blend;

import org.jspecify.annotations.Nullable;
import stillroom.science.blend.DualSimplex.Outcome;

/**
 * Branch and bound over which ingredients are used: dives from the open node with the least bound, taking the better side,
 * until nothing is left that could be better than the best blend by more than the proof gap.
 */
final class Search {
    private static final int MOST_ITERATIONS = 50_000;
    private static final int ROUND_EVERY = 16;

    private final Workings workings;
    private final Incumbent incumbent;
    private final Rounding rounding;
    private final Branching branching;
    private final Fixing fixing;
    private final Patience patience;
    private final OpenNodes open = new OpenNodes();
    private long nodes;
    private double setAside = Double.POSITIVE_INFINITY;

    /** @param known objective of a blend at hand, which this search must beat; positive infinity where there is none */
    Search(Blend blend, Dominance dominance, Patience patience, double known) {
        this.workings = new Workings(blend, dominance);
        this.incumbent = new Incumbent(workings, known);
        this.rounding = new Rounding(workings, incumbent);
        this.branching = new Branching(workings);
        this.fixing = new Fixing(blend, workings.relaxation);
        this.patience = patience;
    }

    Searched run() {
        Decisions first = Decisions.first(workings.blend);
        open.add(new Node(first, Double.NEGATIVE_INFINITY, workings.simplex.basis()));
        while (!open.isEmpty()) {
            Node node = open.next(incumbent.atHand());
            while (node != null) {
                double bound = bound(node);
                if (bound > incumbent.cutoff()) {
                    break;
                }
                if (patience.isOver(new Progress(incumbent.objective(), bound, nodes))) {
                    return new Searched(incumbent.best(), bound, nodes, true);
                }
                node = explore(node);
            }
        }
        return new Searched(incumbent.best(), Math.min(incumbent.objective(), setAside), nodes, false);
    }

    private double bound(Node node) {
        return Math.min(Math.min(node.bound(), open.leastBound()), setAside);
    }

    /** @return the side to go on with, or null where nothing is left here */
    private @Nullable Node explore(Node node) {
        nodes++;
        if (node.bound() > incumbent.cutoff()) {
            return null;
        }
        Outcome outcome = workings.solve(node.decisions(), node.basis(), incumbent.cutoff(), MOST_ITERATIONS);
        if (outcome == Outcome.STALLED) {
            setAside = Math.min(setAside, node.bound());
        }
        if (outcome != Outcome.OPTIMAL) {
            return null;
        }
        double bound = Math.max(node.bound(), workings.objective());
        double[] fractions = workings.relaxation.fractions(workings.simplex);
        Basis basis = workings.simplex.basis();
        Decisions decisions = node.decisions().copy();
        fixing.decide(decisions, workings.simplex, incumbent.cutoff() - workings.objective());
        if (workings.stands(fractions)) {
            incumbent.settle(decisions, fractions, basis);
        } else if (nodes % ROUND_EVERY == 1 || !incumbent.atHand()) {
            rounding.near(decisions, fractions, basis);
        }
        if (bound > incumbent.cutoff()) {
            return null;
        }
        workings.dominance.spread(decisions);
        return split(new Node(decisions, bound, basis), fractions);
    }

    private @Nullable Node split(Node node, double[] fractions) {
        Branching.Choice choice = branching.choose(node, fractions, node.bound(), node.basis(), incumbent.cutoff());
        if (choice.ingredient() < 0) {
            return null;
        }
        Node without = side(node, choice, false);
        Node with = side(node, choice, true);
        Node better = without.bound() < with.bound() ? without : with;
        Node other = better == with ? without : with;
        if (other.bound() <= incumbent.cutoff()) {
            open.add(other);
        }
        return better.bound() <= incumbent.cutoff() ? better : null;
    }

    private Node side(Node node, Branching.Choice choice, boolean used) {
        double bound = used ? choice.boundWith() : choice.boundWithout();
        return new Node(workings.dominance.with(node.decisions(), choice.ingredient(), used), bound, node.basis());
    }
}
