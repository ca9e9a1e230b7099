package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.desk.shell.Input;
import stillroom.formulary.trial.TrialSet;

/** Limits on sums as the maker types them, by the letters of the lines, and as they are kept, by the number of what varies. */
final class Limits {
    private static final Pattern NAME = Pattern.compile("[A-Za-z]+_?\\d*");
    private static final Pattern PERCENT = Pattern.compile("(\\d+(?:\\.\\d+)?) %");

    private final List<String> lineIds;
    private final List<TrialSet.Component> components;

    /** @param lineIds of all lines of the formula, in their order */
    Limits(List<String> lineIds, List<TrialSet.Component> components) {
        this.lineIds = List.copyOf(lineIds);
        this.components = List.copyOf(components);
    }

    /** A to Z, then AA and so on. */
    static String letter(int row) {
        String last = String.valueOf((char) ('A' + row % 26));
        return row < 26 ? last : letter(row / 26 - 1) + last;
    }

    /** Each line that was typed, as it is kept; what cannot be read is refused with a sentence. */
    List<String> read(Input input, String field) {
        List<String> kept = new ArrayList<>();
        for (String typed : input.lines(field)) {
            translated(typed, input, field).ifPresent(kept::add);
        }
        return kept;
    }

    private Optional<String> translated(String typed, Input input, String field) {
        Matcher names = NAME.matcher(typed);
        List<String> found = names.results().map(MatchResult::group).toList();
        for (String name : found) {
            if (number(name).isEmpty()) {
                return input.refuse(
                        field,
                        "\u201c" + typed + "\u201d names " + name + ", which is not one of the lines that vary: "
                                + String.join(", ", known()) + ".");
            }
        }
        String sentence = names.replaceAll(name -> "x" + number(name.group()).orElseThrow())
                .replace("%", "")
                .replaceAll("(\\d),(\\d)", "$1.$2")
                .strip();
        try {
            new ConstraintReader(components.size()).sentence(sentence);
            return Optional.of(sentence);
        } catch (IllegalArgumentException unreadable) {
            return input.refuse(
                    field,
                    "\u201c" + typed + "\u201d cannot be read. Write it like " + String.join(" + ", known())
                            + " <= 45: letters of lines that vary, then <= or >=, then one figure.");
        }
    }

    /** The number among those that vary: by the letter of the line, or as x1, x2. */
    private Optional<Integer> number(String name) {
        if (name.matches("[xX]_?\\d+")) {
            int stated = Integer.parseInt(name.replaceAll("\\D", ""));
            return stated >= 1 && stated <= components.size() ? Optional.of(stated) : Optional.empty();
        }
        for (int i = 0; i < components.size(); i++) {
            if (letter(lineIds.indexOf(components.get(i).lineId())).equalsIgnoreCase(name)) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    private List<String> known() {
        return components.stream()
                .map(one -> letter(lineIds.indexOf(one.lineId())))
                .toList();
    }

    /** What is said of shares of the components, said in percent of the formula and with the names of the lines. */
    static String inFormula(String sentence, List<TrialSet.Component> components, double share) {
        String percents = PERCENT.matcher(sentence)
                .replaceAll(found -> rounded(Double.parseDouble(found.group(1)) * share / 100) + " %");
        String said = percents;
        for (int i = components.size(); i >= 1; i--) {
            said = said.replaceAll(
                    "\\bx" + i + "\\b",
                    Matcher.quoteReplacement(components.get(i - 1).name()));
        }
        return said;
    }

    private static String rounded(double percent) {
        return TrialPage.plain(Math.rint(percent * 100) / 100);
    }
}
