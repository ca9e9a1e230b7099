package stillroom.desk.products;

import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import stillroom.desk.products.Draft.Slot;

/** The acts by which a draft is put in another order: pure, on what was typed, so that nothing typed is lost by them. */
final class Rearranging {
    private Rearranging() {}

    /**
     * The draft after an act.
     *
     * @param what the act, as the address names it
     * @param on id of the phase, line or step; of no meaning for {@code phase-add}
     * @param version in which new ids are born
     */
    static Draft apply(Draft draft, String what, String on, int version) {
        return switch (what) {
            case "line-up" -> moveLine(draft, on, -1);
            case "line-down" -> moveLine(draft, on, 1);
            case "line-copy" -> copyLine(draft, on, draft.freshId("c", version));
            case "line-remove" -> eachSlot(draft, slot -> slot.withLines(lines -> without(lines, on)));
            case "phase-add" -> addPhase(draft, draft.freshId("p", version));
            case "phase-up" -> movePhase(draft, on, -1);
            case "phase-down" -> movePhase(draft, on, 1);
            case "phase-remove" ->
                draft.withSlots(draft.slots().stream()
                        .filter(slot -> !slot.phase().equals(on))
                        .toList());
            case "step-up" -> eachSlot(draft, slot -> slot.withSteps(steps -> moved(steps, steps.indexOf(on), -1)));
            case "step-down" -> eachSlot(draft, slot -> slot.withSteps(steps -> moved(steps, steps.indexOf(on), 1)));
            case "step-remove" -> eachSlot(draft, slot -> slot.withSteps(steps -> without(steps, on)));
            default -> throw new NotFoundResponse("There is no such act.");
        };
    }

    private static Draft eachSlot(Draft draft, UnaryOperator<Slot> change) {
        return draft.withSlots(draft.slots().stream().map(change).toList());
    }

    private static List<String> without(List<String> ids, String id) {
        return ids.stream().filter(one -> !one.equals(id)).toList();
    }

    /** The same list with one entry moved; unchanged where it is not in it or would leave it. */
    private static <T> List<T> moved(List<T> list, int from, int by) {
        int to = from + by;
        if (from < 0 || to < 0 || to >= list.size()) {
            return list;
        }
        List<T> changed = new ArrayList<>(list);
        Collections.swap(changed, from, to);
        return changed;
    }

    private static int slotWhere(Draft draft, Predicate<Slot> is) {
        for (int i = 0; i < draft.slots().size(); i++) {
            if (is.test(draft.slots().get(i))) {
                return i;
            }
        }
        return -1;
    }

    /** Past the end of its phase a line goes into the neighbouring one. */
    private static Draft moveLine(Draft draft, String id, int by) {
        int from = slotWhere(draft, slot -> slot.lines().contains(id));
        if (from < 0) {
            return draft;
        }
        Slot slot = draft.slots().get(from);
        int inside = slot.lines().indexOf(id) + by;
        if (inside >= 0 && inside < slot.lines().size()) {
            return replaced(draft, from, slot.withLines(lines -> moved(lines, lines.indexOf(id), by)));
        }
        int to = from + by;
        if (to < 0 || to >= draft.slots().size()) {
            return draft;
        }
        Draft taken = replaced(draft, from, slot.withLines(lines -> without(lines, id)));
        return replaced(taken, to, taken.slots().get(to).withLines(lines -> {
            lines.add(by < 0 ? lines.size() : 0, id);
            return lines;
        }));
    }

    private static Draft replaced(Draft draft, int place, Slot slot) {
        List<Slot> slots = new ArrayList<>(draft.slots());
        slots.set(place, slot);
        return draft.withSlots(slots);
    }

    private static Draft copyLine(Draft draft, String id, String copy) {
        Draft copied = eachSlot(
                draft,
                slot -> slot.withLines(lines -> {
                    if (lines.contains(id)) {
                        lines.add(lines.indexOf(id) + 1, copy);
                    }
                    return lines;
                }));
        for (String field : Draft.LINE_FIELDS) {
            if (draft.values().containsKey(Draft.line(id, field))) {
                copied = copied.with(Draft.line(copy, field), draft.value(Draft.line(id, field)));
            }
        }
        return copied;
    }

    private static Draft addPhase(Draft draft, String id) {
        List<Slot> slots = new ArrayList<>(draft.slots());
        slots.add(new Slot(id, List.of(), List.of()));
        int count = slots.size();
        while (hasPhaseNamed(draft, "Phase " + count)) {
            count++;
        }
        return draft.withSlots(slots).with(Draft.phase(id, "name"), "Phase " + count);
    }

    private static boolean hasPhaseNamed(Draft draft, String name) {
        return draft.slots().stream()
                .anyMatch(slot -> draft.value(Draft.phase(slot.phase(), "name")).equals(name));
    }

    private static Draft movePhase(Draft draft, String id, int by) {
        return draft.withSlots(
                moved(draft.slots(), slotWhere(draft, slot -> slot.phase().equals(id)), by));
    }
}
