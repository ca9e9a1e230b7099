package stillroom.formulary.rule;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashSet;
import java.util.Locale;
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
        "not_for",
        "purpose",
        "limit_percent",
        "counting",
        "expressed_as",
        "expressed_molar_mass",
        "ph_max",
        "not_with",
        "warning",
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
                row.list("substances"),
                scope(row),
                limit(row),
                row.text("warning"),
                span(row),
                new Citation(row.required("source_key"), row.required("paragraph"), day(row, "read_on")),
                row.text("note"));
    }

    private static Scope scope(ReferenceRow row) {
        Set<Brief.People> notFor = new LinkedHashSet<>();
        for (String word : row.list("not_for")) {
            notFor.add(Brief.People.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')));
        }
        Scope.Purpose purpose =
                row.text("purpose").isEmpty() ? Scope.Purpose.ANY : row.choice("purpose", Scope.Purpose.class);
        return new Scope(Scope.productsOf(row.list("products")), notFor, purpose);
    }

    private static Limit limit(ReferenceRow row) {
        Limit.Counting counting =
                row.text("counting").isEmpty() ? Limit.Counting.SUM : row.choice("counting", Limit.Counting.class);
        return new Limit(
                row.number("limit_percent"),
                counting,
                row.text("expressed_as"),
                row.number("expressed_molar_mass"),
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
