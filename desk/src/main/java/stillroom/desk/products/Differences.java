package stillroom.desk.products;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Comparison;
import stillroom.formulary.formula.Comparison.Pair;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Step;
import stillroom.formulary.quantity.Percent;

/** What differs between two formulas, in words. */
final class Differences {
    private Differences() {}

    /** One sentence for each line and step in which what was typed differs from what is stored. */
    static List<String> between(FormulaVersion stored, DraftReading typed, Cards cards, int decimals) {
        Comparison comparison = Comparison.of(stored.formula(), typed.formula());
        List<String> words = new ArrayList<>();
        if (!stored.why().equals(typed.why())) {
            words.add("Why this version: \"" + stored.why() + "\" is stored; you typed \"" + typed.why() + "\".");
        }
        for (Pair<Line> pair : comparison.lines()) {
            if (pair.differs()) {
                words.add(ofLine(pair, cards, decimals));
            }
        }
        for (Pair<Step> pair : comparison.steps()) {
            if (pair.differs()) {
                words.add("Step: " + stepOr(pair.left(), "none") + " is stored; you typed "
                        + stepOr(pair.right(), "none") + ".");
            }
        }
        return words;
    }

    private static String stepOr(Optional<Comparison.Placed<Step>> step, String none) {
        return step.map(placed -> "\"" + SideBySide.words(placed.what()) + "\"").orElse(none);
    }

    private static String ofLine(Pair<Line> pair, Cards cards, int decimals) {
        if (pair.left().isEmpty()) {
            return "Only in what you typed: " + line(pair.right().orElseThrow().what(), cards, decimals) + ".";
        }
        if (pair.right().isEmpty()) {
            return "Only in what is stored: " + line(pair.left().orElseThrow().what(), cards, decimals) + ".";
        }
        return "Stored: " + line(pair.left().get().what(), cards, decimals) + ", in "
                + pair.left().get().phase().name() + ". You typed: "
                + line(pair.right().get().what(), cards, decimals) + ", in "
                + pair.right().get().phase().name() + ".";
    }

    private static String line(Line line, Cards cards, int decimals) {
        String note = line.note().isEmpty() ? "" : " (\"" + line.note() + "\")";
        return cards.name(line.materialKey()) + " " + amount(line.amount(), decimals) + note;
    }

    /** An amount in words, such as "2.50 %", "q.s. to 100", "q.s. to pH, about 0.30 % (0.10 to 0.60 %)". */
    static String amount(Amount amount, int decimals) {
        return amount.match(
                fixed -> percent(fixed.percent(), decimals),
                () -> AmountKind.TO_HUNDRED.words(),
                reading -> AmountKind.of(amount).words() + ", about " + percent(reading.expected(), decimals) + " ("
                        + Format.percent(reading.range().low(), decimals) + " to "
                        + percent(reading.range().high(), decimals) + ")");
    }

    /** The figure and its unit on one line. */
    private static String percent(Percent percent, int decimals) {
        return Format.percent(percent, decimals) + "\u00a0%";
    }
}
