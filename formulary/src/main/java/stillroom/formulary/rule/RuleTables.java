package stillroom.formulary.rule;

import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.formulary.constants.EffectiveConstantsFile;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** The rule tables of this jar, or one of a maker's own; the format stands in the tables' README. */
public final class RuleTables {
    private static final Map<String, List<String>> TABLES = Map.of(
            "EU", List.of("annex-ii", "annex-iii", "annex-iv", "annex-v", "annex-vi", "allergens", "guidance", "reach"),
            "UK", List.of("annex-ii", "annex-iii", "annex-iv", "annex-v", "annex-vi", "allergens"),
            "US", List.of("cfr", "colours"));

    private RuleTables() {}

    /** The book of this jar. */
    public static RuleBook standard() {
        Map<String, MarketLaw> laws = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> market : TABLES.entrySet()) {
            laws.put(market.getKey(), law(market.getKey(), market.getValue()));
        }
        return new RuleBook(
                laws,
                claims(),
                SideTables.duties(ReferenceTable.read("rules/duties.csv", SideTables.DUTIES), ""),
                SideTables.warnings(ReferenceTable.read("rules/warnings.csv", SideTables.WARNINGS)),
                order(),
                PublishedFigures.norrish(),
                AcidConstantsFile.shipped(),
                SideTables.notCovered(ReferenceTable.read("rules/coverage.csv", SideTables.COVERAGE)),
                Map.of("US", SideTables.names(ReferenceTable.read("rules/us/names.csv", SideTables.NAMES))),
                PublishedFigures.inhibition(),
                PublishedFigures.exposure(),
                PublishedFigures.aggregateOfPreservatives(),
                PublishedFigures.distribution(),
                PublishedFigures.growth(),
                EffectiveConstantsFile.shipped());
    }

    /** The text of every table of the law in this jar, by its file name. */
    public static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        TABLES.forEach((market, tables) -> tables.forEach(table -> {
            String file = "rules/" + market.toLowerCase(Locale.ROOT) + "/" + table + ".csv";
            texts.put(file, ReferenceTable.text(file));
        }));
        for (String side : List.of("claims", "duties", "warnings", "coverage", "letter-heights", "us/names")) {
            texts.put("rules/" + side + ".csv", ReferenceTable.text("rules/" + side + ".csv"));
        }
        return texts;
    }

    private static MarketLaw law(String market, List<String> tables) {
        List<Rule> rules = new ArrayList<>();
        for (String table : tables) {
            String file = "rules/" + market.toLowerCase(Locale.ROOT) + "/" + table + ".csv";
            rules.addAll(rules(market, table, ReferenceTable.read(file, RuleRow.columns())));
        }
        return new MarketLaw(market, rules);
    }

    /** The rows of one table of a maker's own, for a market of any code; a refusal names the line. */
    public static List<Rule> read(String market, String table, Reader text) {
        return rules(market, table, ReferenceTable.parse(table, text, RuleRow.columns()));
    }

    /**
     * A market of a maker's own from the texts of its folder, by file name without {@code .csv}. The names
     * {@code duties}, {@code warnings}, {@code names} and {@code coverage} are the side tables, every other is a rule
     * table under its own name.
     *
     * @throws stillroom.formulary.reference.ReferenceFault naming file and line
     */
    public static Country country(String market, Map<String, String> texts) {
        List<Rule> rules = new ArrayList<>();
        for (Map.Entry<String, String> text : new TreeMap<>(texts).entrySet()) {
            if (!SideTables.FILES.contains(text.getKey())) {
                rules.addAll(read(market, text.getKey(), new StringReader(text.getValue())));
            }
        }
        return new Country(
                new MarketLaw(market, rules),
                SideTables.duties(side(texts, "duties", SideTables.DUTIES), market),
                SideTables.warnings(side(texts, "warnings", SideTables.WARNINGS)),
                SideTables.names(side(texts, "names", SideTables.NAMES)),
                SideTables.notCovered(side(texts, "coverage", SideTables.COVERAGE))
                        .getOrDefault(market, "its tables do not say what they leave out"));
    }

    private static List<ReferenceRow> side(Map<String, String> texts, String file, String[] columns) {
        String text = texts.get(file);
        return text == null ? List.of() : ReferenceTable.parse(file, new StringReader(text), columns);
    }

    private static List<Rule> rules(String market, String table, List<ReferenceRow> rows) {
        List<Rule> rules = new ArrayList<>(rows.size());
        LinkedHashSet<String> ids = new LinkedHashSet<>();
        for (ReferenceRow row : rows) {
            Rule rule = RuleRow.rule(market, table, row);
            if (!ids.add(rule.id())) {
                throw row.fault("a second row is called " + rule.id() + "; give it a letter in \"row\"");
            }
            rules.add(rule);
        }
        return List.copyOf(rules);
    }

    private static List<GovernedClaim> claims() {
        List<GovernedClaim> claims = new ArrayList<>();
        for (ReferenceRow row : ReferenceTable.read(
                "rules/claims.csv", "id", "weight", "markets", "words", "unless", "law", "says", "source")) {
            claims.add(new GovernedClaim(
                    row.required("id"),
                    row.choice("weight", GovernedClaim.Weight.class),
                    row.list("markets"),
                    row.list("words"),
                    row.list("unless"),
                    row.text("law"),
                    row.required("says"),
                    row.required("source")));
        }
        return claims;
    }

    private static List<OrderRule> order() {
        List<OrderRule> order = new ArrayList<>();
        for (ReferenceRow row :
                ReferenceTable.read("craft/order.csv", "id", "weight", "first", "then", "reason", "mend", "source")) {
            order.add(new OrderRule(
                    row.required("id"),
                    row.required("weight").equals("fault"),
                    row.list("first"),
                    row.list("then"),
                    row.required("reason"),
                    row.required("mend"),
                    row.required("source")));
        }
        return order;
    }
}
