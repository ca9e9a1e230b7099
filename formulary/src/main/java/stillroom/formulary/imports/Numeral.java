package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number out of a text, with point or comma, with or without separated thousands.
 *
 * @param flags empty where it can be read in one way only
 */
record Numeral(BigDecimal value, List<Flag> flags) {
    /** A number at the beginning or end of something else. */
    static final String FORM = "[+-]?(?:\\d[\\d.,'’]*(?: \\d{3}(?!\\d)[\\d.,]*)*|[.,]\\d+)";

    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d*[.,]\\d+|[+-]?\\d+[.,]");
    private static final Pattern GROUPED_POINT = Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d+)?");
    private static final Pattern GROUPED_COMMA = Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+(,\\d+)?");
    /** One mark with three digits behind it: thousands or decimals. */
    private static final Pattern TWO_WAYS = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

    /** @param mark the decimal mark of the sheet, where it is known */
    static Optional<Numeral> read(String typed, Optional<Mark> mark) {
        String text = typed.strip().replaceAll("['’ ]", "");
        if (WHOLE.matcher(text).matches()) {
            return sound(text);
        }
        if (TWO_WAYS.matcher(text).matches()) {
            return Optional.of(twoWays(text, mark));
        }
        if (DECIMAL.matcher(text).matches()) {
            return Optional.of(decimal(text, mark));
        }
        if (GROUPED_POINT.matcher(text).matches()) {
            return sound(text.replace(",", ""));
        }
        return GROUPED_COMMA.matcher(text).matches()
                ? sound(text.replace(".", "").replace(',', '.'))
                : Optional.empty();
    }

    /** What a number tells about the decimal mark of its sheet; nothing where it could be read in two ways. */
    static Optional<Mark> evidence(String typed) {
        String text = typed.strip().replaceAll("['’ ]", "");
        if (TWO_WAYS.matcher(text).matches()) {
            return Optional.empty();
        }
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.matches()) {
            return Optional.of(text.indexOf(',') >= 0 ? Mark.COMMA : Mark.POINT);
        }
        if (WHOLE.matcher(text).matches()) {
            return Optional.empty();
        }
        if (GROUPED_POINT.matcher(text).matches()) {
            return Optional.of(Mark.POINT);
        }
        return GROUPED_COMMA.matcher(text).matches() ? Optional.of(Mark.COMMA) : Optional.empty();
    }

    /** Whether a text is a number that could be read in two ways. */
    static boolean isTwoWays(String typed) {
        return TWO_WAYS.matcher(typed.strip()).matches();
    }

    private static Optional<Numeral> sound(String plain) {
        return Optional.of(new Numeral(new BigDecimal(plain), List.of()));
    }

    private static Numeral decimal(String text, Optional<Mark> mark) {
        Mark own = text.indexOf(',') >= 0 ? Mark.COMMA : Mark.POINT;
        String plain = text.replace(',', '.');
        BigDecimal value = new BigDecimal(plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain);
        boolean foreign = mark.isPresent() && mark.get() != own;
        return new Numeral(
                value,
                foreign
                        ? List.of(Flag.doubt(
                                "\"" + text + "\" has a decimal " + own.words() + ", where the rest of the sheet has a "
                                        + mark.get().words() + "."))
                        : List.of());
    }

    private static Numeral twoWays(String text, Optional<Mark> mark) {
        Mark own = text.indexOf(',') >= 0 ? Mark.COMMA : Mark.POINT;
        String decimal = text.replace(',', '.');
        String thousands = text.replaceAll("[.,]", "");
        if (mark.isEmpty()) {
            return new Numeral(
                    new BigDecimal(decimal),
                    List.of(Flag.doubt("\"" + text + "\" can be " + new BigDecimal(decimal).toPlainString() + " or "
                            + thousands + "; nothing in the sheet decides it.")));
        }
        return new Numeral(new BigDecimal(mark.get() == own ? decimal : thousands), List.of());
    }
}
