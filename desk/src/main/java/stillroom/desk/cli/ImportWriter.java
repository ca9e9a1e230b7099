package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import stillroom.desk.imports.CardNames;
import stillroom.desk.imports.HeldSheet;
import stillroom.desk.imports.Outcome;
import stillroom.desk.imports.SettledFormula;
import stillroom.desk.imports.SettledLine;
import stillroom.desk.imports.SettledMaterial;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.Match;
import stillroom.formulary.imports.TypedAmount;

/** Writes what was understood of a sheet as JSON. The fields stand in docs/commands.md. */
final class ImportWriter {
    private ImportWriter() {}

    static ObjectNode sheet(HeldSheet sheet, CardNames cards) {
        ObjectNode node = object().put("sheet", sheet.grid().name())
                .put("turned", sheet.read().grid().turned());
        sheet.read().mark().ifPresent(mark -> node.put("decimalMark", mark.words()));
        flags(node, sheet.read().flags());
        ArrayNode formulas = node.putArray("formulas");
        SettledFormula.all(sheet, cards).forEach(formula -> formulas.add(formula(formula)));
        ArrayNode materials = node.putArray("materials");
        SettledMaterial.all(sheet, cards).forEach(material -> materials.add(material(material)));
        return node;
    }

    static ObjectNode outcome(Outcome outcome) {
        ObjectNode node = object().put("what", outcome.what()).put("stored", outcome.isStored());
        if (outcome.isStored()) {
            node.put("path", outcome.path());
        }
        ArrayNode reasons = node.putArray("reasons");
        outcome.reasons().forEach(reasons::add);
        return node;
    }

    private static ObjectNode formula(SettledFormula formula) {
        ObjectNode node = object().put("title", formula.title());
        formula.read().unit().ifPresent(unit -> node.put("unit", unit.words()));
        ArrayNode lines = node.putArray("lines");
        formula.lines().forEach(line -> lines.add(line(line)));
        ArrayNode notes = node.putArray("notes");
        formula.read().notes().forEach(notes::add);
        flags(node, formula.read().flags());
        return node;
    }

    private static ObjectNode line(SettledLine line) {
        ObjectNode node = object().put("row", line.read().row() + 1)
                .put("nameCell", line.read().nameCell())
                .put("amountCell", line.read().amountCell());
        names(node, line.read().names());
        node.put("written", line.read().written());
        line.read().amount().ifPresent(amount -> node.put("amount", TypedAmount.write(amount)));
        node.put("phase", line.phase());
        match(node, line.match());
        flags(node, line.read().flags());
        return node;
    }

    private static ObjectNode material(SettledMaterial material) {
        ObjectNode node = object().put("row", material.read().row() + 1)
                .put("nameCell", material.read().nameCell());
        names(node, material.read().names());
        material.read()
                .price()
                .ifPresent(price -> node.put("paid", price.paid().value())
                        .put("forGrams", price.amount().value()));
        material.read().stock().ifPresent(stock -> node.put("stockGrams", stock.value()));
        material.read().expires().ifPresent(day -> node.put("expires", day.toString()));
        node.put("supplier", material.read().supplier())
                .put("lot", material.read().lot());
        match(node, material.match());
        flags(node, material.read().flags());
        return node;
    }

    private static void names(ObjectNode node, List<String> names) {
        ArrayNode list = node.putArray("names");
        names.forEach(list::add);
    }

    private static void match(ObjectNode node, Match match) {
        node.put("match", match.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        match.materialKey().ifPresent(key -> node.put("card", key));
    }

    private static void flags(ObjectNode node, List<Flag> flags) {
        ArrayNode list = node.putArray("flags");
        flags.forEach(flag -> list.add(object().put("doubtful", flag.doubtful()).put("sentence", flag.sentence())));
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
