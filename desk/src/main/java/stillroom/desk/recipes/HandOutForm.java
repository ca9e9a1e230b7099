package stillroom.desk.recipes;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.HandOut.LineWords;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Grams;

/** The form in which an author says what a recipe may tell. */
final class HandOutForm {
    private HandOutForm() {}

    static Map<String, String> fields(HandOut words) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("size", words.size().toString());
        fields.put("step", words.step().toString());
        tick(fields, "suppliers", words.suppliers());
        tick(fields, "prices", words.prices());
        words.lines().forEach((id, line) -> {
            fields.put("why-" + id, line.why());
            fields.put("instead-" + id, String.join("\n", line.instead()));
            tick(fields, "own-" + id, line.ownStrength());
        });
        return fields;
    }

    private static void tick(Map<String, String> fields, String name, boolean ticked) {
        if (ticked) {
            fields.put(name, "on");
        }
    }

    /** What was typed; empty where some of it cannot be taken. */
    static Optional<HandOut> read(Input input, Formula formula) {
        Optional<Grams> size = input.grams("size", "The batch size");
        if (size.isEmpty() || size.get().signum() <= 0) {
            if (!input.hasProblem("size")) {
                input.refuse("size", "The batch size is missing.");
            }
        }
        if (!HandOutPage.STEPS.contains(input.text("step"))) {
            input.refuse("step", "Choose the step of the balance.");
        }
        Map<String, LineWords> lines = new LinkedHashMap<>();
        for (Line line : formula.lines()) {
            String id = line.id();
            lines.put(id, new LineWords(input.text("why-" + id), input.lines("instead-" + id), input.has("own-" + id)));
        }
        return input.isSound()
                ? Optional.of(new HandOut(
                        size.orElseThrow(),
                        Grams.of(input.text("step")),
                        lines,
                        input.has("suppliers"),
                        input.has("prices")))
                : Optional.empty();
    }
}
