package stillroom.desk.products;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.Guidance;
import stillroom.formulary.imports.Match;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.imports.ReadFormula;
import stillroom.formulary.imports.ReadLine;
import stillroom.formulary.imports.SheetReading;
import stillroom.ledger.imports.SpreadsheetFile;

/**
 * One line out of a spreadsheet, read as files are read that are brought in.
 *
 * @param typed the amount as it was pasted
 * @param materialKey the card that the name means; where there is none, the name itself
 * @param known whether there is such a card
 * @param amount empty where no figure could be read
 * @param doubts what may be wrong
 */
record Pasted(
        String typed, String name, String materialKey, boolean known, Optional<Amount> amount, List<String> doubts) {
    /** The lines of all formulas in a pasted table, with headings or without. */
    static List<Pasted> read(String text, Cards cards, NameIndex names) {
        return SpreadsheetFile.openText("Pasted table", evenly(text))
                .match(
                        opened -> opened.sheets().stream()
                                .map(grid -> SheetReading.read(grid, Guidance.NONE, names::knows))
                                .flatMap(sheet -> sheet.formulas().stream())
                                .flatMap(formula -> lines(formula, cards, names).stream())
                                .toList(),
                        refused -> List.of());
    }

    /** Typed lines may be parted by semicolons where copied ones are parted by tabs. */
    private static String evenly(String text) {
        return !text.contains("\t")
                ? text
                : text.lines()
                        .map(line -> line.contains("\t") ? line : line.replace(';', '\t'))
                        .collect(Collectors.joining("\n"));
    }

    /** What holds for the whole is said at its first line. */
    private static List<Pasted> lines(ReadFormula formula, Cards cards, NameIndex names) {
        List<Pasted> lines = new ArrayList<>();
        for (ReadLine line : formula.lines()) {
            List<Flag> flags = new ArrayList<>(line.flags());
            formula.doubts().filter(flag -> lines.isEmpty()).forEach(flags::add);
            lines.add(of(line, flags, cards, names));
        }
        return lines;
    }

    private static Pasted of(ReadLine line, List<Flag> flags, Cards cards, NameIndex names) {
        Match match = names.match(line.names(), line.cas());
        Optional<String> sure =
                cards.key(line.name()).or(() -> match.isDoubtful() ? Optional.empty() : match.materialKey());
        List<String> doubts =
                flags.stream().filter(Flag::doubtful).map(Flag::sentence).toList();
        return new Pasted(
                line.written(), line.name(), sure.orElse(line.name()), sure.isPresent(), line.amount(), doubts);
    }

    /** What keeps the line from being added; empty where nothing does. */
    Optional<String> problem() {
        if (name.isBlank()) {
            return Optional.of("There is no name beside \"" + typed + "\".");
        }
        return amount.isPresent()
                ? Optional.empty()
                : Optional.of("There is no percentage from 0 to 100 in \"" + typed + "\" beside \"" + name + "\".");
    }
}
