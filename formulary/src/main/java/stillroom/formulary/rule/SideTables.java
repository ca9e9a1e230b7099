package stillroom.formulary.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.formulary.reference.ReferenceRow;

/** The tables beside the rules: duties, wordings, names, and what is left out. */
final class SideTables {
    static final String[] DUTIES = {"id", "markets", "when", "says", "mend", "source"};
    static final String[] WARNINGS = {"key", "language", "text", "legal_wording", "source"};
    static final String[] NAMES = {"inci_name", "name", "source"};
    static final String[] COVERAGE = {"market", "not_covered"};
    static final Set<String> FILES = Set.of("duties", "warnings", "names", "coverage");

    private SideTables() {}

    /** With a market given, every duty is that market's own, whatever its row says. */
    static List<Duty> duties(List<ReferenceRow> rows, String market) {
        List<Duty> duties = new ArrayList<>();
        for (ReferenceRow row : rows) {
            duties.add(new Duty(
                    row.required("id"),
                    market.isEmpty() ? row.list("markets") : List.of(market),
                    row.choice("when", Duty.When.class),
                    row.required("says"),
                    row.required("mend"),
                    row.required("source")));
        }
        return duties;
    }

    static List<WarningText> warnings(List<ReferenceRow> rows) {
        List<WarningText> warnings = new ArrayList<>();
        for (ReferenceRow row : rows) {
            warnings.add(new WarningText(
                    row.required("key"),
                    row.required("language"),
                    row.required("text"),
                    row.yesNo("legal_wording"),
                    row.required("source")));
        }
        return warnings;
    }

    /** A market's own names of ingredients. */
    static Map<String, String> names(List<ReferenceRow> rows) {
        Map<String, String> names = new LinkedHashMap<>();
        for (ReferenceRow row : rows) {
            row.required("source");
            names.put(row.required("inci_name"), row.required("name"));
        }
        return names;
    }

    static Map<String, String> notCovered(List<ReferenceRow> rows) {
        Map<String, String> notCovered = new LinkedHashMap<>();
        for (ReferenceRow row : rows) {
            notCovered.put(row.required("market"), row.required("not_covered"));
        }
        return notCovered;
    }
}
