package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.Apportioned;
import stillroom.science.weighing.Apportionment;
import stillroom.science.weighing.Share;

/**
 * The rounded grams of all lines, which add up to the batch.
 *
 * @param residue line that took what rounding left over
 * @param conflict ids of lines for which no step of their balance lies between the least and the most allowed
 */
record Targets(List<Grams> grams, Optional<String> residue, List<String> conflict) {

    static Targets of(List<LineInHand> lines, Grams batch) {
        List<String> conflict = conflict(lines);
        List<Share> shares = lines.stream()
                .map(line -> conflict.contains(line.line().id()) ? line.freeShare() : line.share())
                .toList();
        Apportioned done = apportion(lines, shares, batch);
        if (done instanceof Apportioned.Exactly exactly) {
            return targets(lines, exactly, conflict);
        }
        return unrounded(lines, batch, conflict);
    }

    private static Apportioned apportion(List<LineInHand> lines, List<Share> shares, Grams batch) {
        OptionalInt taker = residueTaker(lines);
        if (taker.isPresent()) {
            Apportioned onto = Apportionment.ontoResidue(shares, batch.value(), taker.getAsInt());
            if (onto instanceof Apportioned.Exactly) {
                return onto;
            }
        }
        return Apportionment.spread(shares, batch.value());
    }

    /** The line that fills up to 100; else the largest line that nothing limits. */
    private static OptionalInt residueTaker(List<LineInHand> lines) {
        return IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).allowed().isEmpty()
                        && lines.get(i).line().reading().isEmpty())
                .boxed()
                .max(Comparator.comparing((Integer i) -> lines.get(i).line().toHundred())
                        .thenComparing(i -> lines.get(i).exact())
                        .thenComparing(Comparator.reverseOrder()))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private static Targets targets(List<LineInHand> lines, Apportioned.Exactly exactly, List<String> conflict) {
        Optional<String> residue = exactly.residue().isPresent()
                ? Optional.of(lines.get(exactly.residue().getAsInt()).line().id())
                : Optional.empty();
        return new Targets(exactly.parts().stream().map(Grams::new).toList(), residue, conflict);
    }

    /** Where no rounding keeps the sum, the exact shares keep it; the advice says that the balance cannot show them. */
    private static Targets unrounded(List<LineInHand> lines, Grams batch, List<String> conflict) {
        List<Grams> exact = lines.stream().map(LineInHand::exact).toList();
        BigDecimal gap = batch.minus(Grams.sum(exact)).value();
        if (gap.signum() != 0) {
            throw new IllegalStateException("shares miss the batch by " + gap.toPlainString() + " g");
        }
        return new Targets(exact, Optional.empty(), conflict);
    }

    private static List<String> conflict(List<LineInHand> lines) {
        return lines.stream()
                .filter(LineInHand::limited)
                .filter(line -> !line.share().hasStep())
                .map(line -> line.line().id())
                .toList();
    }
}
