package stillroom.science.weighing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Rounds shares of a whole, each to its own step, so that the rounded shares add up to the whole exactly. */
public final class Apportionment {
    private Apportionment() {}

    /**
     * Rounds every share but one to its nearest step; that one takes what is left, whatever its own step. A share whose
     * nearest step would cross its floor or ceiling takes the next step inside, so it is off by less than one step;
     * every other by at most half a step.
     *
     * @param residue index of the share that takes what is left
     */
    public static Apportioned ontoResidue(List<Share> shares, BigDecimal whole, int residue) {
        List<Integer> without = withoutStep(shares, residue);
        if (!without.isEmpty()) {
            return noStep(without);
        }
        List<BigDecimal> parts = new ArrayList<>();
        BigDecimal left = whole;
        for (int i = 0; i < shares.size(); i++) {
            BigDecimal part = i == residue ? BigDecimal.ZERO : rounded(shares.get(i));
            parts.add(part);
            left = left.subtract(part);
        }
        if (!shares.get(residue).allows(left)) {
            return new Apportioned.Impossible(
                    "what rounding leaves over, " + left.toPlainString()
                            + ", does not fit the share that should take it",
                    List.of(residue));
        }
        parts.set(residue, left);
        return new Apportioned.Exactly(parts, OptionalInt.of(residue));
    }

    /**
     * Rounds every share to its nearest step and then moves single shares by one step each, those first that end
     * nearest to their exact value, until the sum is the whole (largest remainder). Every share is off by less than
     * one and a half steps, by less than one where all steps are equal and no floor or ceiling stands in the way.
     */
    public static Apportioned spread(List<Share> shares, BigDecimal whole) {
        List<Integer> without = withoutStep(shares, -1);
        if (!without.isEmpty()) {
            return noStep(without);
        }
        List<BigDecimal> parts = new ArrayList<>();
        shares.forEach(share -> parts.add(rounded(share)));
        BigDecimal left = whole.subtract(sum(parts));
        List<Integer> moved = new ArrayList<>();
        while (left.signum() != 0) {
            OptionalInt next = nearestToMove(shares, parts, moved, left);
            if (next.isEmpty()) {
                return new Apportioned.Impossible(
                        left.toPlainString() + " is left over and no share may take it in single steps",
                        IntStream.range(0, shares.size())
                                .filter(i -> shares.get(i).limited())
                                .boxed()
                                .toList());
            }
            int i = next.getAsInt();
            BigDecimal move = move(shares.get(i), left);
            parts.set(i, parts.get(i).add(move));
            left = left.subtract(move);
            moved.add(i);
        }
        return new Apportioned.Exactly(parts, OptionalInt.empty());
    }

    private static OptionalInt nearestToMove(
            List<Share> shares, List<BigDecimal> parts, List<Integer> moved, BigDecimal left) {
        return IntStream.range(0, shares.size())
                .filter(i -> !moved.contains(i))
                .filter(i -> shares.get(i).step().compareTo(left.abs()) <= 0)
                .filter(i -> shares.get(i).allows(parts.get(i).add(move(shares.get(i), left))))
                .boxed()
                .min((a, b) -> offAfter(shares.get(a), parts.get(a), left)
                        .compareTo(offAfter(shares.get(b), parts.get(b), left)))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private static BigDecimal offAfter(Share share, BigDecimal part, BigDecimal left) {
        return part.add(move(share, left)).subtract(share.exact()).abs();
    }

    private static BigDecimal move(Share share, BigDecimal left) {
        return left.signum() < 0 ? share.step().negate() : share.step();
    }

    private static List<Integer> withoutStep(List<Share> shares, int residue) {
        return IntStream.range(0, shares.size())
                .filter(i -> i != residue && shares.get(i).rounded().isEmpty())
                .boxed()
                .toList();
    }

    private static Apportioned noStep(List<Integer> conflict) {
        return new Apportioned.Impossible("no whole number of steps lies between floor and ceiling", conflict);
    }

    private static BigDecimal rounded(Share share) {
        Optional<BigDecimal> value = share.rounded();
        return value.orElseThrow();
    }

    private static BigDecimal sum(List<BigDecimal> parts) {
        return parts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
