package stillroom.formulary.reference;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One row of a reference table; every refusal names file, line and column. Immutable. */
public final class ReferenceRow {
    private final String file;
    private final long line;
    private final Map<String, Integer> places;
    private final List<String> fields;

    ReferenceRow(String file, long line, Map<String, Integer> places, List<String> fields) {
        this.file = file;
        this.line = line;
        this.places = places;
        this.fields = fields;
    }

    /** The field as written, possibly empty. */
    public String text(String column) {
        return fields.get(indexOf(column)).strip();
    }

    /** The field, which must not be empty. */
    public String required(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw fault("\"" + column + "\" is empty");
        }
        return text;
    }

    public Optional<String> optional(String column) {
        String text = text(column);
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** The parts of a field between upright bars, none if the field is empty. */
    public List<String> list(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return List.of();
        }
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int bar = text.indexOf('|'); bar >= 0; bar = text.indexOf('|', from)) {
            parts.add(part(column, text.substring(from, bar)));
            from = bar + 1;
        }
        parts.add(part(column, text.substring(from)));
        return parts;
    }

    /** The number in the field, in the unit that the column's name states. */
    public Optional<Double> number(String column) {
        Optional<BigDecimal> exact = decimal(column);
        return exact.isPresent() ? Optional.of(exact.get().doubleValue()) : Optional.empty();
    }

    /** The number in the field exactly as written. */
    public Optional<BigDecimal> decimal(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            throw fault("\"" + text + "\" in \"" + column + "\" is not a number");
        }
    }

    public BigDecimal requiredDecimal(String column) {
        required(column);
        return decimal(column).orElseThrow();
    }

    /** The constant of a closed set whose name, in lower case with hyphens, stands in the field. */
    public <E extends Enum<E>> E choice(String column, Class<E> set) {
        String text = required(column);
        for (E constant : set.getEnumConstants()) {
            if (spells(constant.name(), text)) {
                return constant;
            }
        }
        throw fault("\"" + text + "\" in \"" + column + "\" is not one of the known words");
    }

    public boolean yesNo(String column) {
        return switch (required(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw fault("\"" + column + "\" must be yes or no");
        };
    }

    /** The exception to throw for something wrong in this row. */
    public ReferenceFault fault(String what) {
        return new ReferenceFault(file, line, what);
    }

    /** Compared letter by letter: thousands of rows are read at start-up, so no text is built for it. */
    private static boolean spells(String constant, String text) {
        if (constant.length() != text.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char written = text.charAt(i);
            char expected = constant.charAt(i) == '_' ? '-' : Character.toLowerCase(constant.charAt(i));
            if (written != expected) {
                return false;
            }
        }
        return true;
    }

    private String part(String column, String raw) {
        String part = raw.strip();
        if (part.isEmpty()) {
            throw fault("\"" + column + "\" has an empty part between bars");
        }
        return part;
    }

    private int indexOf(String column) {
        Integer place = places.get(column);
        if (place == null) {
            throw new IllegalArgumentException("no column " + column + " was asked for in " + file);
        }
        return place;
    }
}
