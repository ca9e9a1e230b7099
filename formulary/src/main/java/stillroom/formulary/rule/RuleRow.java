package stillroom.formulary.rule;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.reference.ReferenceRow;

/** One line of a rule table made into a rule. */
final class RuleRow {
    private static final String[] COLUMNS = {
        "entry",
        "row",
        "kind",
        "name",
        "substances",
        "products",
        "only_for",
        "not_for",
        "purpose",
        "limit_percent",
        "counting",
        "expressed_as",
        "expressed_molar_mass",
        "ph_min",
        "ph_max",
        "not_with",
        "warning",
        "warning_above_percent",
        "valid_from",
        "valid_until",
        "stock_until",
        "amended_by",
        "source_key",
        "paragraph",
        "read_on",
        "note"
    };

    private RuleRow() {}

    static String[] columns() {
        return COLUMNS.clone();
    }

    static Rule rule(String market, String table, ReferenceRow row) {
        try {
            return made(market, table, row);
        } catch (IllegalArgumentException trouble) {
            throw row.fault(String.valueOf(trouble.getMessage()));
        }
    }

    private static Rule made(String market, String table, ReferenceRow row) {
        String entry = row.required("entry");
        String letter = row.text("row");
        String id =
                market.toLowerCase(Locale.ROOT) + "-" + table + "-" + entry + (letter.isEmpty() ? "" : "." + letter);
        return new Rule(
                id,
                market,
                table,
                entry,
                row.choice("kind", Rule.Kind.class),
                row.required("name"),
                substances(row),
                scope(row),
                limit(row),
                new LabelDemand(row.list("warning"), row.number("warning_above_percent")),
                span(row),
                new Citation(row.required("source_key"), row.required("paragraph"), day(row, "read_on")),
                row.text("note"));
    }

    private static Scope scope(ReferenceRow row) {
        Scope.Purpose purpose =
                row.text("purpose").isEmpty() ? Scope.Purpose.ANY : row.choice("purpose", Scope.Purpose.class);
        return new Scope(
                Scope.productsOf(row.list("products")), people(row, "only_for"), people(row, "not_for"), purpose);
    }

    private static Set<Brief.People> people(ReferenceRow row, String column) {
        Set<Brief.People> people = new LinkedHashSet<>();
        for (String word : row.list(column)) {
            people.add(Brief.People.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')));
        }
        return people;
    }

    /** Keys of the substances, without what the row says they hold. */
    private static List<String> substances(ReferenceRow row) {
        List<String> keys = new ArrayList<>();
        for (String part : row.list("substances")) {
            int sign = part.indexOf('=');
            keys.add(sign < 0 ? part : part.substring(0, sign));
        }
        return keys;
    }

    /** What the row counts in 1 g of a substance, written as {@code kaolin=0.209}. */
    private static Map<String, Double> contents(ReferenceRow row) {
        Map<String, Double> contents = new LinkedHashMap<>();
        for (String part : row.list("substances")) {
            int sign = part.indexOf('=');
            if (sign >= 0) {
                contents.put(part.substring(0, sign), content(row, part.substring(sign + 1)));
            }
        }
        return contents;
    }

    private static double content(ReferenceRow row, String figure) {
        try {
            double content = Double.parseDouble(figure);
            if (content > 0 && content <= 1) {
                return content;
            }
        } catch (NumberFormatException trouble) {
            // Refused below, with the file and line.
        }
        throw row.fault("\"" + figure + "\" in \"substances\" is no content between 0 and 1 g/g");
    }

    private static Limit limit(ReferenceRow row) {
        Limit.Counting counting =
                row.text("counting").isEmpty() ? Limit.Counting.SUM : row.choice("counting", Limit.Counting.class);
        return new Limit(
                row.number("limit_percent"),
                counting,
                row.text("expressed_as"),
                row.number("expressed_molar_mass"),
                contents(row),
                row.number("ph_min"),
                row.number("ph_max"),
                Set.copyOf(row.list("not_with")));
    }

    private static Span span(ReferenceRow row) {
        return new Span(
                day(row, "valid_from"), day(row, "valid_until"), day(row, "stock_until"), row.text("amended_by"));
    }

    private static Optional<LocalDate> day(ReferenceRow row, String column) {
        String text = row.text(column);
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException trouble) {
            throw row.fault("\"" + text + "\" in \"" + column + "\" is no date such as 2026-11-25");
        }
    }
}
