package stillroom.desk.materials;

import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Predicate;

/** Keys made from names: lower case with hyphens. */
public final class Slug {
    private static final int LONGEST = 60;

    private Slug() {}

    /** The key for a name; empty where the name holds no letter or digit. */
    public static String of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{IsAlphabetic}\\p{IsDigit}]+", "-");
        String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
        return cut.replaceAll("^-+|-+$", "");
    }

    /** The key for a name that is not taken yet: with a number behind it where it must be. */
    public static String free(String name, Predicate<String> taken) {
        String key = of(name);
        String candidate = key;
        for (int n = 2; taken.test(candidate); n++) {
            candidate = key + "-" + n;
        }
        return candidate;
    }
}
