package stillroom.science.weighing;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * Reads one line of text that a balance sends. Which text means what is said by a pattern, so that any balance that
 * sends plain lines can be read. Immutable.
 */
public final class ScaleLine {
    /** A figure with a unit at the end of the line, whatever stands before it. */
    public static final String USUAL = "[^0-9+-]*(?<value>[+-]? *[0-9]{1,7}(?:[.,][0-9]{1,6})?) *(?<unit>kg|mg|g)";

    private static final int LONGEST_LINE = 80;
    private static final BigDecimal MOST_GRAMS = BigDecimal.valueOf(1_000_000);

    private final Pattern pattern;
    private final String moving;

    private ScaleLine(Pattern pattern, String moving) {
        this.pattern = pattern;
        this.moving = moving;
    }

    /**
     * What a balance said.
     *
     * @param grams as shown, tare and sign included [g]
     * @param stable whether it says that the weight does not move any more
     */
    public record Reading(BigDecimal grams, boolean stable) {}

    /**
     * @param pattern a regular expression for the whole line with a group called {@code value}, a plain decimal; and
     *     where the line names one, a group called {@code unit} (kg, g or mg; without it the figure is in grams)
     * @param moving text that stands in a line while the weight still moves; empty where the balance only sends at rest
     * @return none where the pattern cannot be read or has no value
     */
    public static Optional<ScaleLine> of(String pattern, String moving) {
        try {
            return pattern.contains("(?<value>")
                    ? Optional.of(new ScaleLine(Pattern.compile(pattern), moving))
                    : Optional.empty();
        } catch (PatternSyntaxException unreadable) {
            return Optional.empty();
        }
    }

    /** The reading of one complete line; none for anything else, such as a line cut off or rubbish. */
    public Optional<Reading> read(String line) {
        String plain = line.strip();
        if (plain.isEmpty() || plain.length() > LONGEST_LINE) {
            return Optional.empty();
        }
        Matcher found = pattern.matcher(plain);
        if (!found.matches()) {
            return Optional.empty();
        }
        return figure(found).map(grams -> new Reading(grams, moving.isEmpty() || !plain.contains(moving)));
    }

    private Optional<BigDecimal> figure(Matcher found) {
        String value = found.group("value");
        if (value == null) {
            return Optional.empty();
        }
        String plain = value.replace(" ", "").replace(',', '.').replaceFirst("^[+]", "");
        if (!plain.matches("-?[0-9]{1,7}(\\.[0-9]{1,6})?")) {
            return Optional.empty();
        }
        BigDecimal grams = new BigDecimal(plain).movePointRight(pointRight(unit(found)));
        return grams.abs().compareTo(MOST_GRAMS) <= 0 ? Optional.of(grams) : Optional.empty();
    }

    private String unit(Matcher found) {
        if (!pattern.pattern().contains("(?<unit>")) {
            return "g";
        }
        String unit = found.group("unit");
        return unit == null ? "g" : unit.toLowerCase(Locale.ROOT);
    }

    private static int pointRight(String unit) {
        return switch (unit) {
            case "kg" -> 3;
            case "mg" -> -3;
            default -> 0;
        };
    }
}
