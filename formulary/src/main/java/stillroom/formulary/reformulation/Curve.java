package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/**
 * What one goal costs in another: the best of each, and between them the best of the one at several bounds of the other. Change is
 * never the bounded one, as it is no sum over the materials.
 */
final class Curve {
    /** Less than this is no difference: percentages are rounded. */
    private static final double SAME = 1e-3;

    private final Reformulation reformulation;
    private final Measure first;
    private final Measure second;
    private final Measure bounded;
    private final Measure free;

    Curve(Reformulation reformulation, Measure first, Measure second) {
        if (first == second) {
            throw new IllegalArgumentException("A curve needs two different goals.");
        }
        this.reformulation = reformulation;
        this.first = first;
        this.second = second;
        this.bounded = first.compareTo(second) > 0 ? first : second;
        this.free = bounded == first ? second : first;
    }

    /** @param found told of the curve so far at each new point */
    List<TradeOff> of(Wish wish, int points, Consumer<List<TradeOff>> found) {
        List<TradeOff> all = new ArrayList<>();
        Optional<TradeOff> strict = point(wish.with(bounded.before(free), 1));
        Optional<TradeOff> loose = point(wish.with(free.before(bounded), 1));
        strict.ifPresent(all::add);
        loose.ifPresent(all::add);
        found.accept(efficient(all));
        if (strict.isPresent() && loose.isPresent()) {
            double from = bounded.of(strict.get().answer());
            double to = bounded.of(loose.get().answer());
            for (double bound : between(from, to, points)) {
                point(bounded(wish.with(free.before(bounded), 1), bound)).ifPresent(all::add);
                found.accept(efficient(all));
            }
        }
        return efficient(all);
    }

    private List<Double> between(double from, double to, int points) {
        List<Double> bounds = new ArrayList<>();
        int steps = points - 1;
        for (int k = 1; k < steps && Math.abs(to - from) > SAME; k++) {
            double bound = from + (to - from) * k / steps;
            double whole = bounded == Measure.COUNT ? Math.floor(bound) : bound;
            if (!bounds.contains(whole) && whole != from && whole != to) {
                bounds.add(whole);
            }
        }
        return bounds;
    }

    /** The maker's own bound stays where it is the stricter one. */
    private Wish bounded(Wish wish, double bound) {
        Bands bands = wish.bands();
        return switch (bounded) {
            case COUNT ->
                wish.atMost(OptionalInt.of((int) Math.min(bound, wish.atMost().orElse(Integer.MAX_VALUE))));
            case NATURAL ->
                wish.with(bands.withNatural(Math.max(bound, bands.natural().orElse(0))));
            case COST -> wish.with(bands.withCost(Math.min(bound, bands.cost().orElse(bound))));
            case CHANGE -> throw new IllegalStateException("change is never bounded");
        };
    }

    private Optional<TradeOff> point(Wish wish) {
        return reformulation.solve(wish).answers().stream()
                .findFirst()
                .map(answer -> new TradeOff(answer, first.of(answer), second.of(answer)));
    }

    /** Without those that another one beats in both, by the first measure. */
    private List<TradeOff> efficient(List<TradeOff> all) {
        List<TradeOff> kept = new ArrayList<>();
        for (TradeOff each : all) {
            if (kept.stream().noneMatch(other -> asGood(other, each))) {
                kept.removeIf(other -> asGood(each, other));
                kept.add(each);
            }
        }
        kept.sort(Comparator.comparingDouble(TradeOff::first));
        return List.copyOf(kept);
    }

    private boolean asGood(TradeOff one, TradeOff other) {
        return first.badness(one.answer()) <= first.badness(other.answer()) + SAME
                && second.badness(one.answer()) <= second.badness(other.answer()) + SAME;
    }
}
