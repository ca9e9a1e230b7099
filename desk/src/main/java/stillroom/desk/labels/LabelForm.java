package stillroom.desk.labels;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;

/** The form of a label: read from what was posted, and filled from what is stored. */
final class LabelForm {
    private LabelForm() {}

    /** The sheet that the form describes; empty where something in it cannot be taken. */
    static Optional<LabelSheet> read(Input input) {
        String name = input.required("productName", "The name on the label");
        Optional<Durability> durability = durability(input);
        int width = input.whole("width", "The width", 15, 300).orElse(90);
        int height = input.whole("height", "The height", 15, 300).orElse(60);
        LabelInput label = new LabelInput(
                name,
                input.text("function"),
                input.text("netContent"),
                "",
                "",
                input.text("language").isBlank() ? "en" : input.text("language"),
                durability,
                input.lines("precautions"));
        return input.isSound() ? Optional.of(new LabelSheet(label, width, height)) : Optional.empty();
    }

    private static Optional<Durability> durability(Input input) {
        Optional<Integer> months = input.whole("months", "The period after opening", 1, 60);
        Optional<LocalDate> bestBefore = input.day("bestBefore", "Best before");
        String reason = input.text("reason");
        String signedBy = input.text("signedBy");
        if (months.isEmpty() && bestBefore.isEmpty()) {
            return Optional.empty();
        }
        if (reason.isBlank()) {
            input.refuse(
                    "reason",
                    "A date or a period after opening needs its reason: the study, or why it keeps that long.");
        }
        if (signedBy.isBlank()) {
            input.refuse("signedBy", "Say who stands for it.");
        }
        return input.isSound() ? Optional.of(new Durability(bestBefore, months, reason, signedBy)) : Optional.empty();
    }

    /** What stands in the fields before anything is typed. */
    static Map<String, String> values(LabelSheet sheet) {
        Map<String, String> values = new HashMap<>();
        LabelInput input = sheet.input();
        values.put("productName", input.productName());
        values.put("function", input.function());
        values.put("netContent", input.netContent());
        values.put("language", input.language());
        values.put("precautions", String.join("\n", input.precautions()));
        values.put("width", Integer.toString(sheet.widthMillimetres()));
        values.put("height", Integer.toString(sheet.heightMillimetres()));
        input.durability().ifPresent(durability -> {
            values.put(
                    "months",
                    durability.monthsAfterOpening().map(String::valueOf).orElse(""));
            values.put(
                    "bestBefore",
                    durability.bestBefore().map(LocalDate::toString).orElse(""));
            values.put("reason", durability.reason());
            values.put("signedBy", durability.signedBy());
        });
        return values;
    }

    /** Languages in which warnings can be entered; the texts themselves are rows of the rule tables. */
    static List<String> languages() {
        return List.of("en", "de", "fr", "es", "it", "nl", "pl", "pt", "sv");
    }
}
