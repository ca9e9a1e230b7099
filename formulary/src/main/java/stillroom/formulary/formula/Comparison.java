package stillroom.formulary.formula;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/** Two formulas held against each other, line by line and step by step; in the right one's order. */
public record Comparison(List<Pair<Line>> lines, List<Pair<Step>> steps) {
    public Comparison {
        lines = List.copyOf(lines);
        steps = List.copyOf(steps);
    }

    /** A line or step where it stands. */
    public record Placed<T>(Phase phase, T what) {}

    /** What stands on both sides, or on one only. */
    public record Pair<T>(Optional<Placed<T>> left, Optional<Placed<T>> right) {
        /** Whether either side would have to change to be like the other; a phase that is only renamed is no change. */
        public boolean differs() {
            return left.isEmpty()
                    || right.isEmpty()
                    || moved()
                    || !left.get().what().equals(right.get().what());
        }

        /** Whether it stands in another phase. */
        public boolean moved() {
            return left.isPresent()
                    && right.isPresent()
                    && !left.get().phase().id().equals(right.get().phase().id());
        }
    }

    /** Pairs by id; what is left over, lines by material and steps by what is done. */
    public static Comparison of(Formula left, Formula right) {
        return new Comparison(
                pair(
                        linesOf(left),
                        linesOf(right),
                        (one, other) -> one.id().equals(other.id()),
                        (one, other) -> one.materialKey().equals(other.materialKey())),
                pair(
                        stepsOf(left),
                        stepsOf(right),
                        (one, other) -> one.id().equals(other.id()),
                        (one, other) -> one.doing().equals(other.doing())));
    }

    private static List<Placed<Line>> linesOf(Formula formula) {
        List<Placed<Line>> placed = new ArrayList<>();
        formula.phases().forEach(phase -> phase.lines().forEach(line -> placed.add(new Placed<>(phase, line))));
        return placed;
    }

    private static List<Placed<Step>> stepsOf(Formula formula) {
        List<Placed<Step>> placed = new ArrayList<>();
        formula.phases().forEach(phase -> phase.steps().forEach(step -> placed.add(new Placed<>(phase, step))));
        return placed;
    }

    private static <T> List<Pair<T>> pair(
            List<Placed<T>> left, List<Placed<T>> right, BiPredicate<T, T> first, BiPredicate<T, T> second) {
        int[] partner = new int[right.size()];
        Set<Integer> taken = new HashSet<>();
        match(left, right, first, partner, taken);
        match(left, right, second, partner, taken);
        List<Pair<T>> pairs = new ArrayList<>();
        for (int i = 0; i < right.size(); i++) {
            Optional<Placed<T>> other = partner[i] == 0 ? Optional.empty() : Optional.of(left.get(partner[i] - 1));
            pairs.add(new Pair<>(other, Optional.of(right.get(i))));
        }
        return withLeftOvers(left, taken, pairs);
    }

    /** Partners are numbered from 1; 0 means none yet. */
    private static <T> void match(
            List<Placed<T>> left, List<Placed<T>> right, BiPredicate<T, T> same, int[] partner, Set<Integer> taken) {
        for (int i = 0; i < right.size(); i++) {
            for (int j = 1; partner[i] == 0 && j <= left.size(); j++) {
                if (!taken.contains(j)
                        && same.test(left.get(j - 1).what(), right.get(i).what())) {
                    partner[i] = j;
                    taken.add(j);
                }
            }
        }
    }

    /** What only the left has stands behind its left neighbour. */
    private static <T> List<Pair<T>> withLeftOvers(List<Placed<T>> left, Set<Integer> taken, List<Pair<T>> pairs) {
        List<Pair<T>> all = new ArrayList<>(pairs);
        int place = 0;
        for (int j = 1; j <= left.size(); j++) {
            Optional<Placed<T>> one = Optional.of(left.get(j - 1));
            if (taken.contains(j)) {
                place = indexOf(all, one) + 1;
            } else {
                all.add(place++, new Pair<>(one, Optional.empty()));
            }
        }
        return all;
    }

    private static <T> int indexOf(List<Pair<T>> pairs, Optional<Placed<T>> left) {
        for (int i = 0; i < pairs.size(); i++) {
            if (pairs.get(i).left().equals(left)) {
                return i;
            }
        }
        throw new IllegalArgumentException("a paired entry is missing from its own pairs");
    }
}
