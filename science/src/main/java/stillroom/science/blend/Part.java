package stillroom.science.blend;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A blend with some ingredients left out for good.
 *
 * @param from position of each kept ingredient in the whole blend
 * @param offset what the left out ones add to the objective of the whole
 */
record Part(Blend blend, int wholeSize, List<Integer> from, double offset) {
    static Part of(Blend whole, IntPredicate kept) {
        List<Integer> from =
                IntStream.range(0, whole.size()).filter(kept).boxed().toList();
        double offset = IntStream.range(0, whole.size())
                .filter(kept.negate())
                .mapToDouble(j -> whole.ingredients().get(j).cost().of(0))
                .sum();
        List<Limit> limits = whole.limits().stream()
                .map(limit -> new Limit(limit.name(), pick(limit.values(), from), limit.min(), limit.max()))
                .toList();
        List<UseLimit> useLimits = whole.useLimits().stream()
                .map(limit -> new UseLimit(limit.name(), positions(limit.of(), from), limit.atMost()))
                .toList();
        int beside = (int) from.stream().filter(whole::isBeside).count();
        return new Part(
                new Blend(pick(whole.ingredients(), from), limits, useLimits, beside), whole.size(), from, offset);
    }

    private static <T> List<T> pick(List<T> of, List<Integer> positions) {
        return positions.stream().map(of::get).toList();
    }

    private static Set<Integer> positions(Set<Integer> ofWhole, List<Integer> from) {
        return IntStream.range(0, from.size())
                .filter(k -> ofWhole.contains(from.get(k)))
                .boxed()
                .collect(Collectors.toSet());
    }

    /** The same ingredients, with narrower bounds. */
    Part with(Blend narrower) {
        return new Part(narrower, wholeSize, from, offset);
    }

    /** Leaves out more, by their position in this part. */
    Part without(IntPredicate gone) {
        if (IntStream.range(0, from.size()).allMatch(gone)) {
            return new Part(blend, wholeSize, List.of(), offset);
        }
        Part inner = of(blend, gone.negate());
        List<Integer> both = inner.from().stream().map(from::get).toList();
        return new Part(inner.blend(), wholeSize, both, offset + inner.offset());
    }

    Incumbent.Found whole(Incumbent.Found found) {
        List<Double> fractions = new ArrayList<>(Collections.nCopies(wholeSize, 0.0));
        for (int k = 0; k < from.size(); k++) {
            fractions.set(from.get(k), found.mix().fractions().get(k));
        }
        Mix mix = new Mix(fractions, found.mix().sums(), found.mix().prices());
        return new Incumbent.Found(found.objective() + offset, mix);
    }
}
