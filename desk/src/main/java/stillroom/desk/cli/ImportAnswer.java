package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.imports.CardNames;
import stillroom.desk.imports.Decisions;
import stillroom.desk.imports.HeldSheet;
import stillroom.desk.imports.Outcome;
import stillroom.desk.imports.SettledFormula;
import stillroom.desk.imports.SettledMaterial;
import stillroom.desk.imports.Storing;
import stillroom.desk.imports.StoringMaterials;
import stillroom.formulary.imports.Grid;
import stillroom.ledger.Ledger;
import stillroom.ledger.imports.Opened;

/**
 * What was understood of a file, and what became of it.
 *
 * @param refused why it could not be read, empty where it could
 * @param outcomes what was stored or not; empty where nothing was to be stored
 */
record ImportAnswer(String file, String refused, List<HeldSheet> sheets, CardNames cards, List<Outcome> outcomes) {
    static ImportAnswer of(String file, Opened opened, CardNames cards) {
        return opened.match(
                found -> new ImportAnswer(file, "", sheets(file, found.sheets(), cards), cards, List.of()),
                refusal -> new ImportAnswer(file, refusal.sentence(), List.of(), cards, List.of()));
    }

    private static List<HeldSheet> sheets(String file, List<Grid> grids, CardNames cards) {
        List<HeldSheet> sheets = new ArrayList<>();
        for (Grid grid : grids) {
            sheets.add(HeldSheet.of(sheets.size() + 1, file, grid, Decisions.NONE, cards.index()));
        }
        return sheets;
    }

    private List<SettledFormula> formulas() {
        return sheets.stream()
                .flatMap(sheet -> SettledFormula.all(sheet, cards).stream())
                .toList();
    }

    /** Whether it was read, holds something, and leaves no question open. */
    boolean isClear() {
        boolean something = sheets.stream().anyMatch(sheet -> !sheet.read().isEmpty());
        boolean materials = sheets.stream()
                .flatMap(sheet -> SettledMaterial.all(sheet, cards).stream())
                .allMatch(one -> one.doubts().isEmpty());
        boolean allStored = outcomes.stream().allMatch(Outcome::isStored);
        boolean sure = formulas().stream().allMatch(SettledFormula::isSound) && materials;
        return something && (outcomes.isEmpty() ? sure : allStored);
    }

    /** The same after storing what can be stored. */
    ImportAnswer stored(Ledger ledger, Instant now, LocalDate today, boolean doubtful) {
        List<Outcome> became = new ArrayList<>();
        for (HeldSheet sheet : sheets) {
            for (SettledFormula formula : SettledFormula.all(sheet, cards)) {
                List<String> reasons = reasons(formula.obstacles(), formula.doubts(), doubtful);
                String path = reasons.isEmpty()
                        ? "/products/"
                                + new Storing(ledger, now, today)
                                        .store(formula, file, sheet.grid().name())
                                        .id()
                        : "";
                became.add(new Outcome(file, formula.title(), path, reasons.isEmpty() ? formula.doubts() : reasons));
            }
            storeMaterials(ledger, today, doubtful, sheet, became);
        }
        return new ImportAnswer(file, refused, sheets, cards, became);
    }

    private void storeMaterials(
            Ledger ledger, LocalDate today, boolean doubtful, HeldSheet sheet, List<Outcome> became) {
        List<SettledMaterial> materials = SettledMaterial.all(sheet, cards);
        if (materials.isEmpty()) {
            return;
        }
        List<String> obstacles =
                materials.stream().flatMap(one -> one.obstacles().stream()).toList();
        List<String> doubts = materials.stream()
                .flatMap(one -> one.doubts().stream().map(doubt -> one.read().name() + ": " + doubt))
                .toList();
        List<String> reasons = reasons(obstacles, doubts, doubtful);
        if (reasons.isEmpty()) {
            new StoringMaterials(ledger, today).store(materials, file);
        }
        became.add(new Outcome(
                file,
                materials.size() + " materials",
                reasons.isEmpty() ? "/materials" : "",
                reasons.isEmpty() ? doubts : reasons));
    }

    private static List<String> reasons(List<String> obstacles, List<String> doubts, boolean doubtful) {
        return obstacles.isEmpty() && !doubtful ? doubts : obstacles;
    }

    /** As JSON, on one line. */
    String json() {
        ObjectNode answer = JsonNodeFactory.instance.objectNode().put("file", file);
        if (!refused.isEmpty()) {
            return answer.put("error", refused).toString();
        }
        ArrayNode list = answer.putArray("sheets");
        sheets.forEach(sheet -> list.add(ImportWriter.sheet(sheet, cards)));
        if (!outcomes.isEmpty()) {
            ArrayNode became = answer.putArray("outcomes");
            outcomes.forEach(outcome -> became.add(ImportWriter.outcome(outcome)));
        }
        return answer.toString();
    }

    /** As a person reads it. */
    String text() {
        if (!refused.isEmpty()) {
            return refused;
        }
        List<String> lines = new ArrayList<>();
        lines.add(file);
        for (SettledFormula formula : formulas()) {
            lines.addAll(ImportWords.of(formula));
            formula.obstacles().forEach(obstacle -> lines.add("    cannot be stored: " + obstacle));
            formula.doubts().forEach(doubt -> lines.add("    look at: " + doubt));
        }
        for (HeldSheet sheet : sheets) {
            lines.addAll(ImportWords.of(SettledMaterial.all(sheet, cards)));
        }
        if (lines.size() == 1) {
            lines.add("  no formula and no list of materials was understood");
        }
        outcomes.forEach(
                outcome -> lines.add("  " + outcome.what() + (outcome.isStored() ? ": stored" : ": not stored")));
        return String.join(System.lineSeparator(), lines);
    }
}
