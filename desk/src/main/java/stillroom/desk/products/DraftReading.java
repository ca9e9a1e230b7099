package stillroom.desk.products;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.products.Draft.Slot;
import stillroom.desk.shell.Input;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;

/**
 * Makes a formula of what was typed. A field that cannot be read keeps its earlier meaning and gets a sentence; all the
 * others are taken, so that one slip never holds up the rest.
 *
 * @param problems what could not be read, and what counts instead
 */
record DraftReading(Formula formula, String why, List<Problem> problems) {
    DraftReading {
        problems = List.copyOf(problems);
    }

    boolean isSound() {
        return problems.isEmpty();
    }

    /** @param before the formula as stored, whose figures go on counting where something cannot be read */
    static DraftReading of(Draft draft, Formula before, String whyBefore, Cards cards) {
        Input input = Input.of(draft.values());
        LineReading lines = new LineReading(draft, input, before, cards);
        List<Phase> phases = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Slot slot : draft.slots()) {
            Optional<Phase> earlier = before.phase(slot.phase());
            List<Line> read =
                    slot.lines().stream().flatMap(id -> lines.read(id).stream()).toList();
            String name =
                    phaseName(input, slot.phase(), earlier.map(Phase::name).orElse("Phase"), names);
            phases.add(new Phase(slot.phase(), name, read, steps(draft, input, slot, before)));
        }
        String why = text(input, "why", Optional.of(whyBefore));
        return new DraftReading(new Formula(phases), why, input.typed().problems());
    }

    private static String phaseName(Input input, String id, String earlier, Set<String> names) {
        String field = Draft.phase(id, "name");
        String name = input.text(field);
        if (name.isEmpty()) {
            input.refuse(field, "A phase needs a name; until it has one it stays \"" + earlier + "\".");
            name = earlier;
        }
        if (!names.add(Cards.folded(name))) {
            input.refuse(
                    field, "Another phase has this name too; give each its own, or the shares cannot be told apart.");
        }
        return name;
    }

    private static List<Step> steps(Draft draft, Input input, Slot slot, Formula before) {
        List<Step> earlier = before.phases().stream()
                .flatMap(phase -> phase.steps().stream())
                .toList();
        List<Step> steps = new ArrayList<>();
        for (String id : slot.steps()) {
            if (!draft.isBlankStep(id)) {
                steps.add(step(
                        input,
                        id,
                        earlier.stream().filter(step -> step.id().equals(id)).findFirst()));
            }
        }
        return steps;
    }

    private static Step step(Input input, String id, Optional<Step> earlier) {
        String doing = Draft.step(id, "doing");
        if (input.required(doing, "What to do").isEmpty()) {
            return step(input, id, earlier.map(Step::doing).orElse(""), earlier);
        }
        return step(input, id, input.text(doing), earlier);
    }

    private static Step step(Input input, String id, String doing, Optional<Step> earlier) {
        return new Step(
                id,
                doing,
                figure(input, Draft.step(id, "celsius"), "The temperature", "-40", earlier.flatMap(Step::celsius)),
                text(input, Draft.step(id, "speed"), earlier.map(Step::speed)),
                figure(input, Draft.step(id, "minutes"), "The time", "0", earlier.flatMap(Step::minutes)),
                text(input, Draft.step(id, "see"), earlier.map(Step::seeIt)),
                text(input, Draft.step(id, "caution"), earlier.map(Step::caution)));
    }

    /** A text that is too long is not cut: the earlier one stays. */
    private static String text(Input input, String field, Optional<String> earlier) {
        String typed = input.text(field);
        return input.hasProblem(field) ? earlier.orElse("") : typed;
    }

    private static Optional<Double> figure(
            Input input, String field, String what, String lowest, Optional<Double> earlier) {
        Optional<Double> read = input.number(field, what, lowest, "100000");
        return read.isEmpty() && input.hasProblem(field) ? earlier : read;
    }
}
