package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;

/** Phases with their lines and steps. */
final class PhaseSection {
    private static final int MOST_LINES = 1_000;
    private static final int MOST_CELSIUS = 300;
    private static final int MOST_MINUTES = 100_000;

    private final Set<String> ids = new HashSet<>();
    private int lineNumber;
    private int stepNumber;

    /** The phases; lines without phases are one phase A. */
    Formula read(Fields root) {
        List<Phase> phases = new ArrayList<>();
        for (Fields one : root.objects("phases", "phase")) {
            phases.add(phase(one, phases.size() + 1));
        }
        if (root.has("lines") || root.has("steps")) {
            if (phases.isEmpty()) {
                phases.add(new Phase(id("", "p1"), "A", lines(root, ""), steps(root)));
            } else {
                root.problem("lines", "lines stand inside phases, or there are no phases");
            }
        }
        if (lineNumber == 0) {
            root.problem("phases", "the formula has no lines: phases with lines are missing");
        }
        if (lineNumber > MOST_LINES) {
            root.problem("phases", "the formula has " + lineNumber + " lines; at most " + MOST_LINES + " are read");
        }
        return new Formula(phases);
    }

    private Phase phase(Fields fields, int number) {
        String name = fields.text("name");
        String called = name.isEmpty() ? String.valueOf((char) ('A' + (number - 1) % 26)) : name;
        Fields said = fields.called("phase " + Shown.brief(called));
        String id = id(said.text("id"), "p" + number);
        Phase phase = new Phase(id, called, lines(said, "phase " + Shown.brief(called) + ", "), steps(said));
        said.done();
        return phase;
    }

    private List<Line> lines(Fields of, String phase) {
        List<Line> lines = new ArrayList<>();
        for (Fields fields : of.objects("lines", "line")) {
            lineNumber++;
            String number = phase + "line " + lineNumber;
            String named = NamedBy.read(fields.called(number), "material");
            lines.add(
                    line(fields.called(named.isEmpty() ? number : number + " (" + NamedBy.shown(named) + ")"), named));
        }
        return lines;
    }

    private Line line(Fields fields, String named) {
        Line line = new Line(
                id(fields.text("id"), "l" + lineNumber), named, AmountFields.read(fields), fields.text("note"));
        fields.done();
        return line;
    }

    private List<Step> steps(Fields of) {
        List<Step> steps = new ArrayList<>();
        for (Fields fields : of.objects("steps", "step")) {
            stepNumber++;
            steps.add(new Step(
                    id(fields.text("id"), "s" + stepNumber),
                    fields.requiredText("do", "what to do"),
                    fields.number("celsius", -50, MOST_CELSIUS),
                    fields.text("speed"),
                    fields.number("minutes", 0, MOST_MINUTES),
                    fields.text("seeIt"),
                    fields.text("caution")));
            fields.done();
        }
        return steps;
    }

    /** The id as given where it is free, else one that is. */
    private String id(String given, String usual) {
        String id = given.isEmpty() ? usual : given;
        for (int next = 2; !ids.add(id); next++) {
            id = usual + "-" + next;
        }
        return id;
    }

    static void write(Formula formula, ObjectNode root) {
        ArrayNode phases = root.putArray("phases");
        for (Phase phase : formula.phases()) {
            ObjectNode into = phases.addObject();
            into.put("id", phase.id());
            into.put("name", phase.name());
            ArrayNode lines = into.putArray("lines");
            phase.lines().forEach(line -> write(line, lines.addObject()));
            if (!phase.steps().isEmpty()) {
                ArrayNode steps = into.putArray("steps");
                phase.steps().forEach(step -> write(step, steps.addObject()));
            }
        }
    }

    private static void write(Line line, ObjectNode into) {
        into.put("id", line.id());
        NamedBy.write(into, "material", line.materialKey());
        AmountFields.write(line.amount(), into);
        Texts.put(into, "note", line.note());
    }

    private static void write(Step step, ObjectNode into) {
        into.put("id", step.id());
        into.put("do", step.doing());
        step.celsius().ifPresent(one -> into.put("celsius", Spans.plain(one)));
        Texts.put(into, "speed", step.speed());
        step.minutes().ifPresent(one -> into.put("minutes", Spans.plain(one)));
        Texts.put(into, "seeIt", step.seeIt());
        Texts.put(into, "caution", step.caution());
    }
}
