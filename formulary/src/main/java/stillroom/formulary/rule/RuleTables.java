package stillroom.formulary.rule;

import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** The rule tables of this jar, or one of a maker's own; the format stands in the tables' README. */
public final class RuleTables {
    private static final Map<String, List<String>> TABLES = Map.of(
            "EU", List.of("annex-ii", "annex-iii", "annex-iv", "annex-v", "annex-vi", "allergens", "guidance"),
            "UK", List.of("annex-ii", "annex-iii", "annex-iv", "annex-v", "allergens"),
            "US", List.of("cfr"));

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
                duties(),
                warnings(),
                order(),
                PublishedFigures.norrish(),
                AcidConstantsFile.shipped(),
                Map.of("US", namesOf("us")),
                PublishedFigures.inhibition(),
                PublishedFigures.exposure(),
                PublishedFigures.distribution(),
                PublishedFigures.growth());
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

    private static List<Duty> duties() {
        List<Duty> duties = new ArrayList<>();
        for (ReferenceRow row :
                ReferenceTable.read("rules/duties.csv", "id", "markets", "when", "says", "mend", "source")) {
            duties.add(new Duty(
                    row.required("id"),
                    row.list("markets"),
                    row.choice("when", Duty.When.class),
                    row.required("says"),
                    row.required("mend"),
                    row.required("source")));
        }
        return duties;
    }

    private static List<WarningText> warnings() {
        List<WarningText> warnings = new ArrayList<>();
        for (ReferenceRow row :
                ReferenceTable.read("rules/warnings.csv", "key", "language", "text", "legal_wording", "source")) {
            warnings.add(new WarningText(
                    row.required("key"),
                    row.required("language"),
                    row.required("text"),
                    row.yesNo("legal_wording"),
                    row.required("source")));
        }
        return warnings;
    }

    private static List<OrderRule> order() {
        List<OrderRule> order = new ArrayList<>();
        for (ReferenceRow row :
                ReferenceTable.read("craft/order.csv", "id", "first", "then", "reason", "mend", "source")) {
            order.add(new OrderRule(
                    row.required("id"),
                    row.list("first"),
                    row.list("then"),
                    row.required("reason"),
                    row.required("mend"),
                    row.required("source")));
        }
        return order;
    }

    /** A market's own names of ingredients. */
    private static Map<String, String> namesOf(String folder) {
        Map<String, String> names = new LinkedHashMap<>();
        for (ReferenceRow row : ReferenceTable.read("rules/" + folder + "/names.csv", "inci_name", "name", "source")) {
            row.required("source");
            names.put(row.required("inci_name"), row.required("name"));
        }
        return names;
    }
}
