package stillroom.formulary.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All rule rows of one market, found by substance. */
public final class MarketLaw {
    private final String market;
    private final List<Rule> rules;
    private final Optional<LocalDate> recordedOn;
    private final Map<String, List<Rule>> bySubstance = new LinkedHashMap<>();

    public MarketLaw(String market, List<Rule> rules) {
        this.market = market;
        this.rules = List.copyOf(rules);
        this.recordedOn = rules.stream()
                .flatMap(rule -> rule.citation().readOn().stream())
                .max(Comparator.naturalOrder());
        for (Rule rule : rules) {
            for (String substance : rule.substances()) {
                bySubstance.computeIfAbsent(substance, key -> new ArrayList<>()).add(rule);
            }
        }
    }

    public String market() {
        return market;
    }

    public List<Rule> rules() {
        return rules;
    }

    /** Every row that names the substance, of any day. */
    public List<Rule> naming(String substance) {
        return bySubstance.getOrDefault(substance, List.of());
    }

    /** Every row that names the substance by one of its names, of any day, each once. */
    public List<Rule> naming(List<String> names) {
        if (names.size() == 1) {
            return naming(names.get(0));
        }
        List<Rule> all = new ArrayList<>();
        for (String name : names) {
            for (Rule rule : naming(name)) {
                if (all.stream().noneMatch(known -> known == rule)) {
                    all.add(rule);
                }
            }
        }
        return all;
    }

    /** Whether the table names the substance on that day. */
    public boolean lists(String table, List<String> names, LocalDate day) {
        return naming(names).stream()
                .anyMatch(rule -> rule.table().equals(table) && rule.span().countsOn(day));
    }

    /** The newest day on which any row was read. */
    public Optional<LocalDate> recordedOn() {
        return recordedOn;
    }
}
