package stillroom.formulary.imports;

import java.util.regex.Pattern;

/** Takes off a name what does not belong to it: list marks before, footnote marks behind. */
final class NameText {
    private static final Pattern BEFORE =
            Pattern.compile("^(?:[-•·▪*–]\\s+|\\d{1,2}[.)]\\s+(?=\\p{L})|\\(?[a-hA-H]\\d{0,2}[.)]\\s+(?=\\p{L}))");
    private static final Pattern BEHIND =
            Pattern.compile("\\s*(?:[*†‡§]+|[¹²³⁴-⁹⁰]+|\\[\\d{1,2}\\]|\\((?:\\d|\\*+)\\)|[:;])$");

    private NameText() {}

    static String of(String text) {
        String plain = text.replaceAll("\\s+", " ").strip();
        String before = "";
        while (!plain.equals(before)) {
            before = plain;
            plain = BEHIND.matcher(plain).replaceFirst("").strip();
        }
        return BEFORE.matcher(plain).replaceFirst("").strip();
    }
}
