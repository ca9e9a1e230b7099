package stillroom.desk.products;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Step;

/**
 * A formula as it stands in the form: the order of phases, lines and steps, and what was typed into each field, to the
 * letter. What is typed may still be wrong; {@link DraftReading} makes a formula of it.
 *
 * @param values by field name
 */
record Draft(List<Slot> slots, Map<String, String> values) {
    /** Ids come back from the browser and go into names and addresses again. */
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9._-]{1,80}");

    /** The fields of a line, beside the phase in which it stands. */
    static final List<String> LINE_FIELDS = List.of("material", "amount", "kind", "low", "high", "note");

    static final List<String> STEP_FIELDS = List.of("doing", "celsius", "speed", "minutes", "see", "caution");

    Draft {
        slots = List.copyOf(slots);
        values = Map.copyOf(values);
    }

    /** The ids of what stands in one phase, in working order. */
    record Slot(String phase, List<String> lines, List<String> steps) {
        Slot {
            lines = List.copyOf(lines);
            steps = List.copyOf(steps);
        }

        Slot withLines(UnaryOperator<List<String>> change) {
            return new Slot(phase, change.apply(new ArrayList<>(lines)), steps);
        }

        Slot withSteps(UnaryOperator<List<String>> change) {
            return new Slot(phase, lines, change.apply(new ArrayList<>(steps)));
        }
    }

    static String line(String id, String field) {
        return "line-" + id + "-" + field;
    }

    static String step(String id, String field) {
        return "step-" + id + "-" + field;
    }

    static String phase(String id, String field) {
        return "phase-" + id + "-" + field;
    }

    /** The form as it was sent. Lines and steps stand where their phase field says, those without a phase in the first. */
    static Draft of(Input input) {
        List<String> phases = ids(input, "phase");
        List<Slot> slots = new ArrayList<>();
        List<String> lines = ids(input, "line");
        List<String> steps = ids(input, "step");
        for (String phase : phases) {
            String first = phases.get(0);
            slots.add(new Slot(
                    phase,
                    standing(lines, id -> phaseOf(input, line(id, "phase"), phases, first), phase),
                    standing(steps, id -> phaseOf(input, step(id, "phase"), phases, first), phase)));
        }
        return new Draft(slots, input.typed().values());
    }

    private static List<String> ids(Input input, String field) {
        return input.all(field).stream()
                .filter(id -> ID.matcher(id).matches())
                .distinct()
                .toList();
    }

    private static List<String> standing(List<String> ids, UnaryOperator<String> phaseOf, String phase) {
        return ids.stream().filter(id -> phaseOf.apply(id).equals(phase)).toList();
    }

    private static String phaseOf(Input input, String field, List<String> phases, String first) {
        String phase = input.text(field);
        return phases.contains(phase) ? phase : first;
    }

    String value(String field) {
        return values.getOrDefault(field, "");
    }

    boolean isBlankLine(String id) {
        return List.of("material", "amount", "note").stream()
                .allMatch(field -> value(line(id, field)).isBlank());
    }

    boolean isBlankStep(String id) {
        return STEP_FIELDS.stream().allMatch(field -> value(step(id, field)).isBlank());
    }

    /** Without the rows in which nothing was typed and that the stored formula does not have. */
    Draft withoutBlanks(Formula stored) {
        Set<String> steps = stored.phases().stream()
                .flatMap(phase -> phase.steps().stream())
                .map(Step::id)
                .collect(Collectors.toSet());
        return withSlots(slots.stream()
                .map(slot -> new Slot(
                        slot.phase(),
                        slot.lines().stream()
                                .filter(id ->
                                        !isBlankLine(id) || stored.line(id).isPresent())
                                .toList(),
                        slot.steps().stream()
                                .filter(id -> !isBlankStep(id) || steps.contains(id))
                                .toList()))
                .toList());
    }

    Draft withSlots(List<Slot> changed) {
        return new Draft(changed, values);
    }

    Draft with(String field, String value) {
        Map<String, String> changed = new LinkedHashMap<>(values);
        changed.put(field, value);
        return new Draft(slots, changed);
    }

    /** All ids of phases, lines and steps. */
    Set<String> ids() {
        Set<String> ids = new HashSet<>();
        for (Slot slot : slots) {
            ids.add(slot.phase());
            ids.addAll(slot.lines());
            ids.addAll(slot.steps());
        }
        return ids;
    }

    /**
     * An id that nothing has yet. It carries the version in which it was born, so that branches do not give one id to
     * two things, and stays the same until it is used, so that the place where something new is typed stays the same.
     */
    String freshId(String prefix, int version) {
        return freshIds(prefix, version, 1).get(0);
    }

    List<String> freshIds(String prefix, int version, int howMany) {
        Set<String> taken = ids();
        return IntStream.iterate(1, count -> count + 1)
                .mapToObj(count -> prefix + version + "x" + count)
                .filter(id -> !taken.contains(id))
                .limit(howMany)
                .toList();
    }
}
