package stillroom.desk.products;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Reads the lines of a draft. Not thread-safe; one per request. */
final class LineReading {
    private final Draft draft;
    private final Input input;
    private final Formula before;
    private final Cards cards;

    LineReading(Draft draft, Input input, Formula before, Cards cards) {
        this.draft = draft;
        this.input = input;
        this.before = before;
        this.cards = cards;
    }

    /** The line, or nothing for a row in which nothing was typed yet, or no material. */
    Optional<Line> read(String id) {
        Optional<Line> earlier = before.line(id);
        if (earlier.isEmpty() && draft.isBlankLine(id)) {
            return Optional.empty();
        }
        Optional<String> material = material(id, earlier);
        Amount amount = amount(id, earlier.map(Line::amount));
        String noteTyped = input.text(Draft.line(id, "note"));
        String note = input.hasProblem(Draft.line(id, "note"))
                ? earlier.map(Line::note).orElse("")
                : noteTyped;
        return material.map(key -> new Line(id, key, amount, note));
    }

    private Optional<String> material(String id, Optional<Line> earlier) {
        String field = Draft.line(id, "material");
        String typed = input.text(field);
        Optional<String> stands = earlier.map(Line::materialKey);
        if (typed.isEmpty()) {
            if (!input.hasProblem(field)) {
                input.refuse(
                        field,
                        "Which material?"
                                + stands.map(key -> " Until you say, the line stays " + cards.name(key)
                                                + "; to take it out use Remove.")
                                        .orElse(" The line is kept once it has a name."));
            }
            return stands;
        }
        if (stands.isPresent() && cards.name(stands.get()).equals(typed)) {
            return stands;
        }
        return Optional.of(cards.key(typed).orElse(typed));
    }

    private Amount amount(String id, Optional<Amount> earlier) {
        String field = Draft.line(id, "amount");
        AmountKind kind = AmountKind.read(draft.value(Draft.line(id, "kind")), draft.value(field));
        if (kind == AmountKind.TO_HUNDRED) {
            return new Amount.ToHundred();
        }
        Percent percent = percent(field, counted(earlier), Percent.ZERO);
        Optional<PercentRange> range =
                earlier.filter(Amount.ToReading.class::isInstance).map(amount -> ((Amount.ToReading) amount).range());
        return kind.reading()
                .map(reading -> toReading(id, reading, percent, range))
                .orElseGet(() -> new Amount.Fixed(percent));
    }

    /** What a line counts with while its amount cannot be read, or when q.s. to 100 is given up for a figure. */
    private Percent counted(Optional<Amount> earlier) {
        return earlier.map(amount -> amount.match(Amount.Fixed::percent, this::rest, Amount.ToReading::expected))
                .orElse(Percent.ZERO);
    }

    private Percent rest() {
        BigDecimal others = before.lines().stream()
                .map(line -> line.amount()
                        .match(
                                fixed -> fixed.percent().value(),
                                () -> BigDecimal.ZERO,
                                reading -> reading.expected().value()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Percent(BigDecimal.valueOf(100).subtract(others).max(BigDecimal.ZERO));
    }

    /** @param blank what an empty field means */
    private Percent percent(String field, Percent counts, Percent blank) {
        if (!draft.values().containsKey(field)) {
            return counts;
        }
        String typed = draft.value(field).strip().replaceFirst("\\s*%$", "");
        if (typed.isEmpty()) {
            return blank;
        }
        Optional<BigDecimal> read = Decimals.read(typed);
        if (read.isEmpty()) {
            return refuse(field, "This is not a figure that can be read: type it like 2.5 or 2,5.", counts);
        }
        if (read.get().signum() < 0) {
            return refuse(field, "A share cannot be below 0 %.", counts);
        }
        if (read.get().compareTo(BigDecimal.valueOf(100)) > 0) {
            return refuse(field, "A share cannot be above 100 %.", counts);
        }
        return new Percent(read.get());
    }

    private Percent refuse(String field, String sentence, Percent counts) {
        input.refuse(field, sentence + " Until then " + counts + " % counts.");
        return counts;
    }

    /** Without a typed range the amount may lie between nothing and twice what is expected, until the maker says better. */
    private Amount toReading(String id, ReadingKind reading, Percent expected, Optional<PercentRange> earlier) {
        Percent twice = new Percent(expected.value().add(expected.value()).min(BigDecimal.valueOf(100)));
        Percent low =
                percent(Draft.line(id, "low"), earlier.map(PercentRange::low).orElse(Percent.ZERO), Percent.ZERO);
        Percent typed =
                percent(Draft.line(id, "high"), earlier.map(PercentRange::high).orElse(twice), twice);
        // A sheet that says q.s. and no more leaves nothing to nothing: that was never stated as a range.
        boolean neverSaid = typed.value().signum() == 0
                && earlier.map(range -> range.high().value().signum() == 0).orElse(false);
        Percent high = neverSaid ? twice : typed;
        if (expected.compareTo(low) < 0 || expected.compareTo(high) > 0) {
            input.refuse(
                    Draft.line(id, "amount"),
                    "The expected " + expected + " % lies outside the range " + low + " to " + high
                            + " %. Until then the range is taken wider.");
        }
        return new Amount.ToReading(reading, expected, new PercentRange(lower(low, expected), higher(high, expected)));
    }

    private static Percent lower(Percent one, Percent other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private static Percent higher(Percent one, Percent other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
