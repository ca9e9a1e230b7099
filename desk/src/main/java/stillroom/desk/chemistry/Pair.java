package stillroom.desk.chemistry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Input;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/** Shares of two emulsifiers whose blend has the HLB that the oils ask for. */
final class Pair {
    private Pair() {}

    /** Non-ionic emulsifiers with an HLB: those of the formula first, then all others by name. */
    static List<Choice> choices(Surface surface, MaterialBook book) {
        List<String> own = surface.emulsifiers().stream()
                .filter(one -> one.hlb().match(hlb -> true, because -> false))
                .map(Surface.Emulsifier::substance)
                .toList();
        Stream<Substance> first = own.stream().flatMap(key -> book.substance(key).stream());
        Stream<Substance> others = book.substances().stream()
                .filter(one -> !own.contains(one.key()) && applies(one))
                .sorted(Comparator.comparing(Substance::inciName));
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", "Choose one"));
        Stream.concat(first, others)
                .map(one -> new Choice(
                        one.key(),
                        one.inciName() + ", HLB " + Format.range(one.hlb().orElseThrow(), 1)))
                .forEach(choices::add);
        return choices;
    }

    private static boolean applies(Substance substance) {
        return substance.charge() == ChargeClass.NONIONIC && substance.hlb().isPresent();
    }

    /** What the pair comes to, one sentence each; empty where none is chosen yet or something cannot be taken. */
    static List<String> solve(Input input, Surface surface, MaterialBook book) {
        Optional<Substance> first = chosen(input, "first", book);
        Optional<Substance> second = chosen(input, "second", book);
        Optional<Double> typed = input.number("asked", "The HLB asked for", "1", "40");
        if (first.isEmpty() || second.isEmpty() || !input.isSound()) {
            return List.of();
        }
        Optional<Figure> oils = surface.requiredHlb().match(Optional::of, because -> Optional.empty());
        Optional<Interval> asked =
                typed.map(Interval::point).or(() -> oils.map(known -> new Interval(known.low(), known.high())));
        if (asked.isEmpty()) {
            return List.of("No HLB is asked for: the oils' is not known here. Type one.");
        }
        return solved(first.get(), second.get(), asked.get(), surface.emulsifierPercent());
    }

    private static Optional<Substance> chosen(Input input, String field, MaterialBook book) {
        return book.substance(input.text(field)).filter(Pair::applies);
    }

    private static List<String> solved(Substance first, Substance second, Interval asked, double together) {
        double one = first.hlb().orElseThrow().middle();
        double other = second.hlb().orElseThrow().middle();
        String both = first.inciName() + " (" + Format.figure(one, 1) + ") and " + second.inciName() + " ("
                + Format.figure(other, 1) + ")";
        Optional<Double> middle = Emulsion.firstOfPair(asked.middle(), one, other);
        if (middle.isEmpty()) {
            return List.of("No blend of " + both + " has an HLB of " + Format.figure(asked.middle(), 1)
                    + ": it lies outside the pair, and nothing is extrapolated. Choose another pair.");
        }
        List<String> sentences = new ArrayList<>();
        double share = middle.get();
        sentences.add("For HLB " + Format.figure(asked.middle(), 1) + ": " + Format.figure(share * 100, 1) + " % "
                + first.inciName() + " and " + Format.figure((1 - share) * 100, 1) + " % " + second.inciName()
                + " of the two together.");
        if (!asked.isPoint()) {
            sentences.add(span(first, asked, one, other));
        }
        if (together > 0) {
            sentences.add("At the " + Format.figure(together, 2) + " % of non-ionic emulsifiers that are in it now: "
                    + Format.figure(share * together, 2) + " % and " + Format.figure((1 - share) * together, 2)
                    + " % of the product.");
        }
        return sentences;
    }

    private static String span(Substance first, Interval asked, double one, double other) {
        Optional<Double> low = Emulsion.firstOfPair(asked.low(), one, other);
        Optional<Double> high = Emulsion.firstOfPair(asked.high(), one, other);
        if (low.isEmpty() || high.isEmpty()) {
            return "The oils ask for " + Format.range(asked, 1) + "; one end of that lies outside the pair.";
        }
        return "Over the whole range that the oils ask for, " + Format.range(asked, 1) + ": "
                + Format.range(100 * Math.min(low.get(), high.get()), 100 * Math.max(low.get(), high.get()), 0)
                + " % " + first.inciName() + ".";
    }
}
