package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people type them: a number, or a text such as "2.5", "2,5" or "2.5 %". */
final class Decimal {
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d{1,30}(\\.\\d{1,30})?");
    /** A comma before three digits may part thousands, unless a zero stands before it. */
    private static final Pattern COMMA = Pattern.compile("[+-]?(0,\\d{1,30}|\\d{1,30},(\\d{1,2}|\\d{4,30}))");

    private static final int MOST_DIGITS = 30;

    private Decimal() {}

    /** Empty where it is no number, or one of an absurd size. */
    static Optional<BigDecimal> of(JsonNode value) {
        if (value.isNumber()) {
            BigDecimal number = value.decimalValue();
            boolean sane = Math.abs((long) number.precision() - number.scale()) <= MOST_DIGITS
                    && Math.abs((long) number.scale()) <= MOST_DIGITS;
            return sane ? Optional.of(number) : Optional.empty();
        }
        return value.isTextual() ? of(value.asText()) : Optional.empty();
    }

    private static Optional<BigDecimal> of(String typed) {
        String text = typed.strip();
        if (text.endsWith("%")) {
            text = text.substring(0, text.length() - 1).strip();
        }
        if (PLAIN.matcher(text).matches()) {
            return Optional.of(new BigDecimal(text));
        }
        return COMMA.matcher(text).matches() ? Optional.of(new BigDecimal(text.replace(',', '.'))) : Optional.empty();
    }
}
