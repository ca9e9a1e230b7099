package stillroom.desk.cli;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.imports.SettledFormula;
import stillroom.desk.imports.SettledLine;
import stillroom.desk.imports.SettledMaterial;
import stillroom.formulary.imports.ReadMaterial;

/** What was understood of a sheet, line by line, as it is read on a terminal. A card that a name was taken for stands behind it. */
final class ImportWords {
    private static final String INDENT = "    ";

    private ImportWords() {}

    static List<String> of(SettledFormula formula) {
        List<String> words = new ArrayList<>();
        words.add("  " + formula.title() + ": " + formula.lines().size() + " lines");
        int phase = formula.lines().stream()
                .mapToInt(line -> line.phase().length())
                .max()
                .orElse(0);
        int amount = formula.lines().stream()
                .mapToInt(line -> amount(line).length())
                .max()
                .orElse(0);
        formula.lines().forEach(line -> {
            words.add(INDENT + padded(line.phase(), phase) + (phase == 0 ? "" : "  ")
                    + padded(amount(line), amount) + "  "
                    + line.read().name() + card(line));
        });
        return words;
    }

    static List<String> of(List<SettledMaterial> materials) {
        List<String> words = new ArrayList<>();
        if (!materials.isEmpty()) {
            words.add("  " + materials.size() + " materials");
        }
        materials.forEach(one -> {
            words.add(INDENT + line(one.settled()));
            one.doubts().forEach(doubt -> words.add(INDENT + "  look at: " + doubt));
        });
        return words;
    }

    private static String line(ReadMaterial material) {
        List<String> parts = new ArrayList<>(List.of(material.name()));
        material.price()
                .ifPresent(price -> parts.add(price.paid().value().toPlainString() + " for "
                        + price.amount().value().toPlainString() + " g"));
        material.stock().ifPresent(stock -> parts.add(stock.value().toPlainString() + " g on the shelf"));
        if (!material.lot().isEmpty()) {
            parts.add("lot " + material.lot());
        }
        return String.join("; ", parts);
    }

    private static String amount(SettledLine line) {
        String typed = line.amountTyped();
        return typed.isEmpty() ? "?" : typed.matches("[\\d.]+") ? typed + " %" : typed;
    }

    private static String card(SettledLine line) {
        return line.card().isBlank() || line.card().equals(line.read().name()) ? "" : " (" + line.card() + ")";
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
