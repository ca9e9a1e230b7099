package stillroom.formulary.imports;

import java.text.Normalizer;
import java.util.Locale;

/** Texts made comparable. */
final class Folding {
    private Folding() {}

    /** Lower case without accents, blanks run together. */
    static String of(String text) {
        return Normalizer.normalize(
                        text.replace("ß", "ss")
                                .replace("æ", "ae")
                                .replace("Æ", "Ae")
                                .replace("ø", "o")
                                .replace("Ø", "O")
                                .replace("ł", "l")
                                .replace("Ł", "L"),
                        Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[\\s_]+", " ")
                .strip();
    }
}
