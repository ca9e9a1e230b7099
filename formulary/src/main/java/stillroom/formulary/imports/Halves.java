package stillroom.formulary.imports;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Parts a text in two languages: "Charge / Lot", "Bestand (Stock)". */
final class Halves {
    private static final Pattern BETWEEN = Pattern.compile("\\s*(?:/|\\||\\n|\\(|\\)|\\s[–—-]\\s)\\s*");
    private static final Pattern WORD = Pattern.compile(".*\\p{L}{2}.*");

    private Halves() {}

    /** What stands on both sides of a stroke, a bracket or a dash, if each side holds a word; otherwise nothing. */
    static List<String> of(String text) {
        if (text.indexOf('/') < 0
                && text.indexOf('(') < 0
                && text.indexOf('\n') < 0
                && text.indexOf('|') < 0
                && !text.matches(".*\\s[–—-]\\s.*")) {
            return List.of();
        }
        List<String> halves = Arrays.stream(BETWEEN.split(text))
                .map(String::strip)
                .filter(half -> !half.isEmpty())
                .toList();
        boolean words = halves.size() > 1
                && halves.stream().allMatch(half -> WORD.matcher(half).matches());
        return words ? halves : List.of();
    }
}
