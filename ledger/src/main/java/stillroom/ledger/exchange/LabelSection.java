package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;

/** What stands on the label besides the formula. */
final class LabelSection {
    private static final int SMALLEST = 15;
    private static final int LARGEST = 300;
    private static final int USUAL_WIDTH = 90;
    private static final int USUAL_HEIGHT = 60;
    private static final int MOST_MONTHS = 600;

    private LabelSection() {}

    static LabelSheet read(Fields fields, String productName) {
        String name = fields.text("productName");
        String language = fields.text("language");
        LabelSheet sheet = new LabelSheet(
                new LabelInput(
                        name.isEmpty() ? productName : name,
                        fields.text("function"),
                        fields.text("netContent"),
                        fields.text("responsiblePerson"),
                        fields.text("batchCode"),
                        language.isEmpty() ? "en" : language,
                        durability(fields),
                        fields.texts("precautions")),
                side(fields, "widthMillimetres", USUAL_WIDTH),
                side(fields, "heightMillimetres", USUAL_HEIGHT));
        fields.done();
        return sheet;
    }

    private static int side(Fields fields, String name, int usual) {
        return fields.decimal(name, SMALLEST, LARGEST).map(BigDecimal::intValue).orElse(usual);
    }

    private static Optional<Durability> durability(Fields label) {
        return label.object("durability").flatMap(fields -> {
            Optional<LocalDate> bestBefore = fields.day("bestBefore");
            Optional<Integer> months =
                    fields.decimal("monthsAfterOpening", 1, MOST_MONTHS).map(BigDecimal::intValue);
            String reason = fields.requiredText("reason", "the study, or why, in words");
            String signedBy = fields.requiredText("signedBy", "who stands for it");
            if (bestBefore.isEmpty() && months.isEmpty()) {
                fields.problem("bestBefore", "bestBefore or monthsAfterOpening is missing");
            }
            fields.done();
            boolean whole = !reason.isEmpty() && !signedBy.isEmpty() && (bestBefore.isPresent() || months.isPresent());
            return whole ? Optional.of(new Durability(bestBefore, months, reason, signedBy)) : Optional.empty();
        });
    }

    static void write(LabelSheet sheet, ObjectNode into) {
        LabelInput input = sheet.input();
        Texts.put(into, "productName", input.productName());
        Texts.put(into, "function", input.function());
        Texts.put(into, "netContent", input.netContent());
        Texts.put(into, "responsiblePerson", input.responsiblePerson());
        Texts.put(into, "batchCode", input.batchCode());
        Texts.put(into, "language", input.language());
        input.durability().ifPresent(one -> {
            ObjectNode durability = into.putObject("durability");
            one.bestBefore().ifPresent(day -> durability.put("bestBefore", day.toString()));
            one.monthsAfterOpening().ifPresent(months -> durability.put("monthsAfterOpening", months));
            durability.put("reason", one.reason());
            durability.put("signedBy", one.signedBy());
        });
        if (!input.precautions().isEmpty()) {
            Spans.list(into, "precautions", input.precautions());
        }
        into.put("widthMillimetres", sheet.widthMillimetres());
        into.put("heightMillimetres", sheet.heightMillimetres());
    }
}
