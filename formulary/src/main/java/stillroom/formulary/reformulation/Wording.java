package stillroom.formulary.reformulation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** How figures and names are written in sentences. */
final class Wording {
    private static final int DECIMALS = 3;

    private Wording() {}

    /** "ANIONIC" as "Anionic". */
    static String capital(String constant) {
        return constant.charAt(0) + constant.substring(1).toLowerCase(Locale.ROOT);
    }

    /** A name within a sentence; what begins with an abbreviation stays. */
    static String lower(String words) {
        boolean abbreviated = words.startsWith("pH") || words.length() > 1 && Character.isUpperCase(words.charAt(1));
        return abbreviated ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }

    static String figure(double value) {
        return figure(value, DECIMALS);
    }

    static String figure(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** What stands behind a figure: the unit, of costs the currency. */
    static String unit(Requirement requirement, String currency) {
        String unit = requirement.name().equals(Requirements.COST) ? currency : requirement.unit();
        return unit.isEmpty() ? "" : " " + unit;
    }

    static String percent(double fraction) {
        return figure(100 * fraction) + " %";
    }

    static String with(double value, String unit) {
        return figure(value, 2) + (unit.isEmpty() ? "" : " " + unit);
    }
}
