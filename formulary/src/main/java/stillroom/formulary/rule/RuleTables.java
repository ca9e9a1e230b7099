package stillroom.formulary.rule;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.formulary.formula.Brief;

/** Reads the rule tables of this jar, or one of a maker's own; the format stands in the tables' README. */
public final class RuleTables {
    private static final List<String> RULE_COLUMNS = List.of(
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
            "note");

    /** Market code to the tables that this jar holds for it. */
    private static final Map<String, List<String>> TABLES = Map.of(
            "EU", List.of("annex-ii", "annex-iii", "annex-iv", "annex-v", "annex-vi", "allergens", "guidance"),
            "UK", List.of("annex-ii", "annex-iii", "annex-v", "allergens"),
            "US", List.of("cfr"));

    private RuleTables() {}

    /** The book of this jar. */
    public static RuleBook standard() {
        Map<String, MarketLaw> laws = new LinkedHashMap<>();
        TABLES.forEach((market, tables) -> {
            List<Rule> rules = new ArrayList<>();
            for (String table : tables) {
                String file = "rules/" + market.toLowerCase(Locale.ROOT) + "/" + table + ".csv";
                rules.addAll(rules(market, table, Table.resource(file, RULE_COLUMNS)));
            }
            refuseTwins(rules);
            laws.put(market, new MarketLaw(market, rules));
        });
        return new RuleBook(laws, claims(), duties(), warnings(), order(), norrish(), AcidConstantsFile.shipped());
    }

    /** The rows of one table of a maker's own, for a market of any code. */
    public static List<Rule> read(String market, String table, Reader text) throws IOException {
        return rules(market, table, Table.read(table, text, RULE_COLUMNS));
    }

    private static List<Rule> rules(String market, String table, Table rows) {
        return rows.rows(row -> rule(market, table, row));
    }

    private static Rule rule(String market, String table, Table.Row row) {
        String entry = row.needed("entry");
        String letter = row.text("row");
        String id =
                market.toLowerCase(Locale.ROOT) + "-" + table + "-" + entry + (letter.isEmpty() ? "" : "." + letter);
        return new Rule(
                id,
                market,
                table,
                entry,
                constant(Rule.Kind.class, row.needed("kind")),
                row.needed("name"),
                row.words("substances", "\\s+"),
                scope(row),
                limit(row),
                row.text("warning"),
                span(row),
                new Citation(
                        row.needed("source_key"), row.needed("paragraph"), row.optional("read_on", LocalDate::parse)),
                row.text("note"));
    }

    private static Scope scope(Table.Row row) {
        Set<Brief.People> notFor = row.words("not_for", "\\s+").stream()
                .map(word -> constant(Brief.People.class, word))
                .collect(Collectors.toSet());
        Scope.Purpose purpose = row.optional("purpose", word -> constant(Scope.Purpose.class, word))
                .orElse(Scope.Purpose.ANY);
        return new Scope(Scope.productsOf(row.text("products")), notFor, purpose);
    }

    private static Limit limit(Table.Row row) {
        return new Limit(
                row.optional("limit_percent", Double::valueOf),
                row.optional("counting", word -> constant(Limit.Counting.class, word))
                        .orElse(Limit.Counting.SUM),
                row.text("expressed_as"),
                row.optional("expressed_molar_mass", Double::valueOf),
                row.optional("ph_max", Double::valueOf),
                Set.copyOf(row.words("not_with", "\\s+")));
    }

    private static Span span(Table.Row row) {
        return new Span(
                row.optional("valid_from", LocalDate::parse),
                row.optional("valid_until", LocalDate::parse),
                row.optional("stock_until", LocalDate::parse),
                row.text("amended_by"));
    }

    private static List<GovernedClaim> claims() {
        List<String> columns = List.of("id", "weight", "markets", "words", "unless", "law", "says", "source");
        return Table.resource("rules/claims.csv", columns)
                .rows(row -> new GovernedClaim(
                        row.needed("id"),
                        constant(GovernedClaim.Weight.class, row.needed("weight")),
                        row.words("markets", "\\s+"),
                        row.words("words", "\\|"),
                        row.words("unless", "\\|"),
                        row.text("law"),
                        row.needed("says"),
                        row.needed("source")));
    }

    private static List<Duty> duties() {
        return Table.resource("rules/duties.csv", List.of("id", "markets", "when", "says", "mend", "source"))
                .rows(row -> new Duty(
                        row.needed("id"),
                        row.words("markets", "\\s+"),
                        constant(Duty.When.class, row.needed("when")),
                        row.needed("says"),
                        row.needed("mend"),
                        row.needed("source")));
    }

    private static List<WarningText> warnings() {
        return Table.resource("rules/warnings.csv", List.of("key", "language", "text", "legal_wording", "source"))
                .rows(row -> new WarningText(
                        row.needed("key"),
                        row.needed("language"),
                        row.needed("text"),
                        row.needed("legal_wording").equals("yes"),
                        row.needed("source")));
    }

    private static List<OrderRule> order() {
        List<String> columns = List.of("id", "first", "then", "reason", "mend", "source");
        return Table.resource("craft/order.csv", columns)
                .rows(row -> new OrderRule(
                        row.needed("id"),
                        row.words("first", "\\s+"),
                        row.words("then", "\\s+"),
                        row.needed("reason"),
                        row.needed("mend"),
                        row.needed("source")));
    }

    private static Map<String, Double> norrish() {
        return Table.resource("water-activity/norrish.csv", List.of("substance", "k", "source"))
                .rows(row -> {
                    row.needed("source");
                    return Map.entry(row.needed("substance"), Double.valueOf(row.needed("k")));
                })
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static <E extends Enum<E>> E constant(Class<E> type, String word) {
        String wanted = word.toUpperCase(Locale.ROOT).replace('-', '_');
        return Arrays.stream(type.getEnumConstants())
                .filter(value -> value.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + word + "\" is none of "
                        + Arrays.toString(type.getEnumConstants()).toLowerCase(Locale.ROOT)));
    }

    private static void refuseTwins(List<Rule> rules) {
        Map<String, Rule> seen = new LinkedHashMap<>();
        for (Rule rule : rules) {
            if (seen.put(rule.id(), rule) != null) {
                throw new IllegalStateException(
                        rule.market() + " " + rule.table() + ": two rows are called " + rule.id());
            }
        }
    }
}
