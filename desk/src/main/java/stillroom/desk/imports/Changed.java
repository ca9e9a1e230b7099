package stillroom.desk.imports;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.imports.Column;
import stillroom.formulary.imports.TypedAmount;

/**
 * Keeps of a sent page only what differs from what was guessed: a field that was left alone is no decision, and follows
 * when another decision changes the guess.
 */
final class Changed {
    private Changed() {}

    static Decisions only(Decisions sent, HeldSheet sheet, CardNames cards) {
        Map<String, String> guessed = guessed(sheet, cards);
        Set<String> before = sheet.decisions().fields().keySet();
        Map<String, String> kept = new HashMap<>();
        sent.fields().forEach((field, said) -> {
            boolean same = said.equals(guessed.get(field)) && !before.contains(field);
            boolean empty = said.isEmpty() && (field.equals("mark") || field.equals("unit") || field.equals("turned"));
            if (!same && !empty && !field.equals("do")) {
                kept.put(field, said);
            }
        });
        // A doubtful card that was shown and left counts as decided once the maker says so for the line.
        sent.fields().keySet().stream()
                .filter(field -> field.startsWith("sure-"))
                .map(field -> "card-" + field.substring("sure-".length()))
                .filter(sent.fields()::containsKey)
                .forEach(field -> kept.put(field, sent.fields().get(field)));
        return new Decisions(kept);
    }

    private static Map<String, String> guessed(HeldSheet sheet, CardNames cards) {
        Map<String, String> guessed = new HashMap<>();
        Set<Integer> decided =
                new HashSet<>(sheet.decisions().guidance().columns().keySet());
        for (Column column : sheet.read().columns()) {
            if (!decided.contains(column.place())) {
                guessed.put("column-" + column.place(), column.meaning().name());
            }
        }
        sheet.read().rows().forEach((row, kind) -> {
            if (!sheet.decisions().guidance().rows().containsKey(row)) {
                guessed.put("row-" + row, kind.name());
            }
        });
        HeldSheet bare = new HeldSheet(sheet.number(), sheet.file(), sheet.grid(), Decisions.NONE, sheet.read());
        SettledFormula.all(bare, cards).forEach(formula -> {
            guessed.put("title-" + formula.number(), formula.title());
            guessed.put("type-" + formula.number(), formula.type().name());
            guessed.putAll(formula.lines().stream()
                    .collect(Collectors.toMap(line -> "card-" + line.field(), SettledLine::card)));
            formula.lines().forEach(line -> {
                guessed.put("phase-" + line.field(), line.phase());
                guessed.put(
                        "amount-" + line.field(),
                        line.amount().map(TypedAmount::write).orElse(""));
            });
        });
        SettledMaterial.all(bare, cards).forEach(material -> {
            guessed.put("card-" + material.field(), material.card());
            guessed.putAll(MaterialFields.guessed(material.read(), material.field()));
        });
        return guessed;
    }
}
