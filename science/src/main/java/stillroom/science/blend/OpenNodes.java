package stillroom.science.blend;

import java.util.TreeSet;

/**
 * The open nodes of a search. Once a blend is at hand, the one with the least bound comes next, for the proof; before that,
 * or where very many are open, the one opened last: it lies deepest, nearest to a whole blend, and keeps the store small.
 */
final class OpenNodes {
    private static final int MANY = 20_000;

    private record Numbered(Node node, long number) {}

    // Comparators in plain code: those put together by Comparator.comparing cannot be kept in an archive of classes.
    private final TreeSet<Numbered> byBound = new TreeSet<>((one, other) -> {
        int bounds = Double.compare(one.node().bound(), other.node().bound());
        return bounds != 0 ? bounds : Long.compare(other.number(), one.number());
    });
    private final TreeSet<Numbered> byNumber =
            new TreeSet<>((one, other) -> Long.compare(one.number(), other.number()));
    private long opened;

    void add(Node node) {
        Numbered numbered = new Numbered(node, opened++);
        byBound.add(numbered);
        byNumber.add(numbered);
    }

    boolean isEmpty() {
        return byBound.isEmpty();
    }

    double leastBound() {
        return isEmpty() ? Double.POSITIVE_INFINITY : byBound.first().node().bound();
    }

    Node next(boolean blendAtHand) {
        boolean deepest = byNumber.size() > MANY || (!blendAtHand && opened % 8 != 0);
        Numbered next = deepest ? byNumber.last() : byBound.first();
        byBound.remove(next);
        byNumber.remove(next);
        return next.node();
    }
}
