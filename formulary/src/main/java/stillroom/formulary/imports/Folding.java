package stillroom.formulary.imports;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts made comparable. */
final class Folding {
    private static final Pattern MARKS = Pattern.compile("\\p{M}");
    private static final Pattern BLANKS = Pattern.compile("[\\s_]+");

    private Folding() {}

    /** Lower case without accents, blanks run together. */
    static String of(String text) {
        return isPlain(text) ? plain(text) : folded(text);
    }

    private static boolean isPlain(String text) {
        return text.chars().allMatch(sign -> sign < 128);
    }

    /** Most texts have no letter with an accent. */
    private static String plain(String text) {
        StringBuilder folded = new StringBuilder(text.length());
        boolean blank = false;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            boolean gap = sign == '_' || sign == ' ' || sign >= '\t' && sign <= '\r';
            if (gap && !blank) {
                folded.append(' ');
            } else if (!gap) {
                folded.append(sign >= 'A' && sign <= 'Z' ? (char) (sign + 'a' - 'A') : sign);
            }
            blank = gap;
        }
        return folded.toString().strip();
    }

    private static String folded(String text) {
        String bare = Normalizer.normalize(
                text.replace("ß", "ss")
                        .replace("æ", "ae")
                        .replace("Æ", "Ae")
                        .replace("ø", "o")
                        .replace("Ø", "O")
                        .replace("ł", "l")
                        .replace("Ł", "L"),
                Normalizer.Form.NFD);
        String lower = MARKS.matcher(bare).replaceAll("").toLowerCase(Locale.ROOT);
        return BLANKS.matcher(lower).replaceAll(" ").strip();
    }
}
