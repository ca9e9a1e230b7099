package stillroom.desk.products;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import stillroom.desk.products.Draft.Slot;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.quantity.Percent;

/** Writes a stored formula into the fields of its form. */
final class DraftWriting {
    private final Map<String, String> values = new LinkedHashMap<>();
    private final Cards cards;
    private final int decimals;

    private DraftWriting(Cards cards, int decimals) {
        this.cards = cards;
        this.decimals = decimals;
    }

    /** @param decimals decimals of percentages that the workshop wants to see */
    static Draft of(Formula formula, String why, Cards cards, int decimals) {
        DraftWriting writing = new DraftWriting(cards, decimals);
        writing.values.put("why", why);
        List<Slot> slots = new ArrayList<>();
        for (Phase phase : formula.phases()) {
            writing.values.put(Draft.phase(phase.id(), "name"), phase.name());
            phase.lines().forEach(writing::write);
            phase.steps().forEach(writing::write);
            slots.add(new Slot(
                    phase.id(),
                    phase.lines().stream().map(Line::id).toList(),
                    phase.steps().stream().map(Step::id).toList()));
        }
        return new Draft(slots, writing.values);
    }

    /** What was read, written properly; what could not be read, as it was typed. */
    static Draft of(DraftReading reading, Draft typed, Cards cards, int decimals) {
        Draft written = of(reading.formula(), reading.why(), cards, decimals);
        Map<String, String> values = new LinkedHashMap<>(written.values());
        reading.problems().forEach(problem -> values.put(problem.field(), typed.value(problem.field())));
        Set<String> read = written.ids();
        for (Slot slot : typed.slots()) {
            slot.lines().stream()
                    .filter(id -> !read.contains(id))
                    .forEach(id -> copy(typed, values, Draft.LINE_FIELDS, field -> Draft.line(id, field)));
        }
        return new Draft(typed.slots(), values);
    }

    private static void copy(
            Draft typed, Map<String, String> values, List<String> fields, UnaryOperator<String> named) {
        fields.forEach(field -> values.put(named.apply(field), typed.value(named.apply(field))));
    }

    private void write(Line line) {
        write(line, "material", cards.name(line.materialKey()));
        write(line, "note", line.note());
        write(line, "kind", AmountKind.of(line.amount()).name());
        if (line.amount() instanceof Amount.Fixed fixed) {
            write(line, "amount", percent(fixed.percent()));
        } else if (line.amount() instanceof Amount.ToReading reading) {
            write(line, "amount", percent(reading.expected()));
            write(line, "low", percent(reading.range().low()));
            write(line, "high", percent(reading.range().high()));
        }
    }

    private void write(Line line, String field, String value) {
        values.put(Draft.line(line.id(), field), value);
    }

    private String percent(Percent percent) {
        return Format.percent(percent, decimals);
    }

    private void write(Step step) {
        values.put(Draft.step(step.id(), "doing"), step.doing());
        values.put(
                Draft.step(step.id(), "celsius"),
                step.celsius().map(DraftWriting::plain).orElse(""));
        values.put(Draft.step(step.id(), "speed"), step.speed());
        values.put(
                Draft.step(step.id(), "minutes"),
                step.minutes().map(DraftWriting::plain).orElse(""));
        values.put(Draft.step(step.id(), "see"), step.seeIt());
        values.put(Draft.step(step.id(), "caution"), step.caution());
    }

    /** A figure as a person would type it. */
    static String plain(double value) {
        String text = Format.figure(value, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
