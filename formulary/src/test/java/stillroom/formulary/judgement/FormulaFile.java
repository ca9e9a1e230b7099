package stillroom.formulary.judgement;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Reads the formulas of the test resources; the format stands at the head of each file by example. */
final class FormulaFile {
    /** One formula with the warnings that it must draw, and other findings that it must draw besides. */
    record Case(
            String name,
            Brief brief,
            Formula formula,
            LocalDate asOf,
            Set<String> expected,
            Set<String> also,
            List<String> own) {
        /** The library with the cards and substances that this case brings along. */
        MaterialBook book(MaterialBook library) {
            return own.isEmpty() ? library : OwnCards.over(library, own);
        }

        Subject subject() {
            return Subjects.of(formula, brief);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private String name = "";
    private ProductType type = ProductType.FACE_CREAM;
    private String market = "EU";
    private Set<Brief.People> people = EnumSet.of(Brief.People.ADULTS);
    private Optional<Interval> ph = Optional.empty();
    private Optional<Money> ceiling = Optional.empty();
    private LocalDate asOf = Bench.TODAY;
    private final List<String> claims = new ArrayList<>();
    private final Set<String> expected = new java.util.TreeSet<>();
    private final Set<String> also = new java.util.TreeSet<>();
    private final List<String> own = new ArrayList<>();
    private final List<Phase> phases = new ArrayList<>();
    private String phase = "";
    private Optional<Double> celsius = Optional.empty();
    private final List<Line> lines = new ArrayList<>();
    private int count;

    static List<Case> read(String resource) {
        try (InputStream stream = FormulaFile.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("no " + resource);
            }
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            List<Case> cases = new ArrayList<>();
            for (String block : text.split("\n\\s*\n")) {
                FormulaFile one = new FormulaFile();
                block.lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                        .forEach(one::take);
                if (!one.name.isEmpty()) {
                    cases.add(one.done());
                }
            }
            return cases;
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    private void take(String line) {
        int colon = line.indexOf(": ");
        if (colon < 0) {
            ingredient(line.split("\\s+"));
            return;
        }
        String value = line.substring(colon + 2).strip();
        switch (line.substring(0, colon)) {
            case "name" -> name = value;
            case "type" -> type = ProductType.valueOf(constant(value));
            case "market" -> market = value;
            case "people" -> people = EnumSet.of(Brief.People.valueOf(constant(value)));
            case "ph" ->
                ph = Optional.of(
                        new Interval(Double.parseDouble(value.split("-")[0]), Double.parseDouble(value.split("-")[1])));
            case "ceiling" -> ceiling = Optional.of(Money.of(value));
            case "as-of" -> asOf = LocalDate.parse(value);
            case "claim" -> claims.add(value);
            case "card", "substance" -> own.add(line);
            case "expect" -> expected.addAll(List.of(value.split("\\s+")));
            case "also" -> also.addAll(List.of(value.split("\\s+")));
            case "phase" -> phase(value.split("\\s+"));
            default -> throw new IllegalArgumentException(line);
        }
    }

    private void phase(String[] words) {
        close();
        phase = words[0];
        celsius = words.length > 1 ? Optional.of(Double.valueOf(words[1])) : Optional.empty();
    }

    private void close() {
        if (!lines.isEmpty()) {
            List<Step> steps = celsius.stream()
                    .map(degrees -> new Step(
                            phase + "1", "Bring to temperature.", Optional.of(degrees), "", Optional.empty(), "", ""))
                    .toList();
            phases.add(new Phase(phase, phase, lines, steps));
            lines.clear();
        }
    }

    private void ingredient(String[] words) {
        Amount amount = words[1].equals("q.s.")
                ? new Amount.ToHundred()
                : words[1].equals("q.s.ph")
                        ? new Amount.ToReading(
                                ReadingKind.PH, Percent.of(words[2]), PercentRange.of(words[3], words[4]))
                        : Amount.fixed(words[1]);
        lines.add(new Line("line" + ++count, words[0], amount, ""));
    }

    private static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private Case done() {
        close();
        Brief brief = new Brief(type, people, "", "", ph, Optional.empty(), ceiling, claims, "", market);
        return new Case(name, brief, new Formula(phases), asOf, expected, also, List.copyOf(own));
    }
}
