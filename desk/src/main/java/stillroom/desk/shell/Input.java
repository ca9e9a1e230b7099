package stillroom.desk.shell;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.Problem;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;

/**
 * A posted form while it is read: each field that cannot be taken adds a problem, and all of it can be shown again.
 * Not thread-safe; one per request.
 */
public final class Input {
    /** Longest text that a field takes; longer ones are refused with a sentence, never cut. */
    public static final int LONGEST_TEXT = 20_000;

    private final Map<String, String> values = new LinkedHashMap<>();
    private final Map<String, List<String>> lists;
    private final List<Problem> problems = new ArrayList<>();

    private Input(Map<String, List<String>> form) {
        lists = form;
        form.forEach((field, typed) -> values.put(field, typed.isEmpty() ? "" : typed.get(0)));
    }

    public static Input of(Context request) {
        return new Input(request.formParamMap());
    }

    /** A form that only asks and changes nothing, sent in the address. */
    public static Input ofQuery(Context request) {
        return new Input(request.queryParamMap());
    }

    /** For tests and for forms that do not come from a browser. */
    public static Input of(Map<String, String> form) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        form.forEach((field, typed) -> lists.put(field, List.of(typed)));
        return new Input(lists);
    }

    public boolean has(String field) {
        return values.containsKey(field);
    }

    /** The text of a field without blanks at its ends; empty when absent. */
    public String text(String field) {
        String typed = values.getOrDefault(field, "").strip();
        if (typed.length() > LONGEST_TEXT) {
            return refuse(
                            field,
                            "This text has " + typed.length() + " characters; up to " + LONGEST_TEXT + " fit here.")
                    .map(Object::toString)
                    .orElse("");
        }
        return typed;
    }

    /** A text that must be there. */
    public String required(String field, String what) {
        String typed = text(field);
        if (typed.isEmpty() && !hasProblem(field)) {
            refuse(field, what + " is missing.");
        }
        return typed;
    }

    /** All values of a field that may occur several times, such as ticked boxes. */
    public List<String> all(String field) {
        return lists.getOrDefault(field, List.of());
    }

    /** The text of a field as it came, blanks and tabs at its ends included; empty when absent or too long. */
    public String raw(String field) {
        return text(field).isEmpty() ? "" : values.getOrDefault(field, "");
    }

    /** Lines of a text area, blank ones left out. */
    public List<String> lines(String field) {
        return Arrays.stream(text(field).split("\\R"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** A decimal within bounds; empty when the field is empty or refused. */
    public Optional<BigDecimal> decimal(String field, String what, String lowest, String highest) {
        String typed = values.getOrDefault(field, "").strip();
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        Optional<BigDecimal> read = Decimals.read(typed);
        if (read.isEmpty()) {
            return refuse(field, what + " is not a number that can be read: type it like 2.5 or 2,5.");
        }
        return within(field, what, read.get(), lowest, highest);
    }

    private Optional<BigDecimal> within(String field, String what, BigDecimal figure, String lowest, String highest) {
        if (figure.compareTo(new BigDecimal(lowest)) < 0 || figure.compareTo(new BigDecimal(highest)) > 0) {
            return refuse(field, what + " must lie between " + lowest + " and " + highest + ".");
        }
        return Optional.of(figure);
    }

    public Optional<Double> number(String field, String what, String lowest, String highest) {
        return decimal(field, what, lowest, highest).map(BigDecimal::doubleValue);
    }

    /** A reading that may run to thousands: a comma that may part them is asked about, not taken for a decimal comma. */
    public Optional<Double> reading(String field, String what, String lowest, String highest) {
        String typed = values.getOrDefault(field, "").strip();
        return Decimals.mayPartThousands(typed) ? refuse(field, twoWays(typed)) : number(field, what, lowest, highest);
    }

    /** What is asked where a comma may part thousands or decimals. */
    public static String twoWays(String typed) {
        String whole = typed.replace(",", "");
        String decimal = typed.replace(',', '.').replaceAll("0{1,2}$", "");
        return typed + " may mean " + whole + " or " + decimal + ": type the one that is meant, without a comma.";
    }

    public Optional<Percent> percent(String field, String what) {
        return decimal(field, what, "0", "100").map(Percent::new);
    }

    /** A mass of at least 0 g and at most a tonne, with or without its unit behind it: 500, 500 g, 0,5 kg. */
    public Optional<Grams> grams(String field, String what) {
        String typed = values.getOrDefault(field, "").strip();
        Optional<BigDecimal> withUnit = Decimals.grams(typed);
        if (withUnit.isPresent()) {
            return within(field, what, withUnit.get(), "0", "1000000").map(Grams::new);
        }
        return decimal(field, what, "0", "1000000").map(Grams::new);
    }

    public Optional<Money> money(String field, String what) {
        return decimal(field, what, "0", "1000000").map(Money::new);
    }

    /** A whole number within bounds. */
    public Optional<Integer> whole(String field, String what, int lowest, int highest) {
        Optional<BigDecimal> read = decimal(field, what, Integer.toString(lowest), Integer.toString(highest));
        if (read.isPresent() && read.get().stripTrailingZeros().scale() > 0) {
            return refuse(field, what + " must be a whole number.");
        }
        return read.map(BigDecimal::intValue);
    }

    /** A day as the browser's date field sends it, year-month-day. */
    public Optional<LocalDate> day(String field, String what) {
        String typed = text(field);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException notADay) {
            return refuse(field, what + " is not a date: type it like 2026-11-25.");
        }
    }

    /** One of the constants of an enum; refused when it is none of them. */
    public <E extends Enum<E>> Optional<E> choice(String field, String what, Class<E> kinds) {
        String typed = text(field);
        for (E kind : kinds.getEnumConstants()) {
            if (kind.name().equals(typed)) {
                return Optional.of(kind);
            }
        }
        return typed.isEmpty() ? Optional.empty() : refuse(field, what + " is not one of the choices.");
    }

    /** Notes a problem and gives back nothing, so that readers can end with it. */
    public <T> Optional<T> refuse(String field, String sentence) {
        problems.add(new Problem(field, sentence));
        return Optional.empty();
    }

    public boolean hasProblem(String field) {
        return problems.stream().anyMatch(problem -> problem.field().equals(field));
    }

    public boolean isSound() {
        return problems.isEmpty();
    }

    /** The form as it is to be shown again. */
    public Typed typed() {
        return new Typed(values, problems);
    }
}
