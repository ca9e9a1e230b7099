package stillroom.desk.shell;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads decimals as people type them: point or comma, no thousands separators, no exponents. */
public final class Decimals {
    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d{1,12}([.,]\\d{0,12})?|[.,]\\d{1,12})");

    private static final Pattern MASS = Pattern.compile("(.*[\\d.,])\\s*(kg|g)", Pattern.CASE_INSENSITIVE);

    private static final Pattern TWO_WAYS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

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

    /** Whether a comma may part thousands as well as decimals: 5,000, but not 0,250 or 5,25. */
    public static boolean mayPartThousands(String typed) {
        return TWO_WAYS.matcher(typed.strip()).matches();
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
