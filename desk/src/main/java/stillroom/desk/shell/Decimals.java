package stillroom.desk.shell;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads decimals as people type them: point or comma, no thousands separators, no exponents. */
public final class Decimals {
    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d{1,12}([.,]\\d{0,12})?|[.,]\\d{1,12})");

    private static final Pattern MASS = Pattern.compile("(.*[\\d.,])\\s*(kg|g)", Pattern.CASE_INSENSITIVE);

    private Decimals() {}

    /** A mass typed with g or kg behind it, in g; nothing where no unit stands there. */
    public static Optional<BigDecimal> grams(String typed) {
        Matcher mass = MASS.matcher(typed.strip());
        if (!mass.matches()) {
            return Optional.empty();
        }
        int places = mass.group(2).equalsIgnoreCase("kg") ? 3 : 0;
        return read(mass.group(1)).map(figure -> figure.movePointRight(places));
    }

    /** The exact figure, or nothing where the text is not one plain decimal. */
    public static Optional<BigDecimal> read(String typed) {
        String text = typed.strip().replace('\u2212', '-').replace("\u00a0", "");
        if (!PLAIN.matcher(text).matches()) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(text.replace(',', '.')));
    }
}
