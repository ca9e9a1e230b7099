package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Writes formula files: equal formulas are equal texts, one line of text for each formula line. */
public final class FormulaFileWriter {
    private FormulaFileWriter() {}

    public static String write(FormulaFile file) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("stillroom", "formula");
        root.put("format", FormulaFile.FORMAT);
        root.put("name", file.name());
        Texts.put(root, "note", file.note());
        BriefSection.write(file.brief(), root.putObject("brief"));
        PhaseSection.write(file.formula(), root);
        file.made().ifPresent(made -> {
            ObjectNode into = root.putObject("made");
            Spans.put(into, "ph", made.ph());
            if (!made.waterLost().isZero()) {
                into.put("waterLostPercent", made.waterLost().value());
            }
        });
        file.label().ifPresent(label -> LabelSection.write(label, root.putObject("label")));
        if (!file.materials().isEmpty()) {
            ArrayNode materials = root.putArray("materials");
            file.materials().forEach(card -> MaterialSection.write(card, materials.addObject()));
        }
        if (!file.substances().isEmpty()) {
            ArrayNode substances = root.putArray("substances");
            file.substances().forEach(one -> SubstanceSection.write(one, substances.addObject()));
        }
        file.kept().forEach(kept -> kept.putInto(root, JsonText.value(kept.json())));
        return Layout.of(root);
    }
}
