package stillroom.desk.lots;

import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Codes of lots, as written on bottles. */
public final class LotCode {
    /** What a code may look like: it stands in addresses and on labels. */
    public static final Pattern FORM = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");

    private static final int LETTERS = 3;

    private LotCode() {}

    /** A short code that is free: letters of the material and a running number, such as GLY-04. */
    public static String propose(String materialName, Predicate<String> taken) {
        String letters = materialName.toUpperCase(Locale.ROOT).replaceAll("[^A-Z]", "");
        String stem = letters.isEmpty() ? "LOT" : letters.substring(0, Math.min(LETTERS, letters.length()));
        int number = 1;
        while (taken.test(code(stem, number))) {
            number++;
        }
        return code(stem, number);
    }

    private static String code(String stem, int number) {
        return stem + "-" + (number < 10 ? "0" : "") + number;
    }
}
