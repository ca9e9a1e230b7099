package stillroom.formulary.material;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.reference.ReferenceRow;

/** Rows of {@code facts.csv}: one figure of one material with its source. */
final class FactTable {
    static final String[] COLUMNS = {"material_key", "fact", "lower", "upper", "basis", "of", "source"};

    /** A figure that a card may carry; the unit is in the name as the table writes it. */
    enum Fact {
        STRENGTH_PERCENT("strength"),
        USAGE_PERCENT("usage"),
        WORKING_PH("workingPh"),
        OWN_PH("ownPh"),
        DENSITY_G_PER_ML("densityGramsPerMillilitre"),
        MAX_CELSIUS("maxCelsius"),
        NATURAL_ORIGIN_INDEX("naturalOriginIndex");

        private final String component;

        Fact(String component) {
            this.component = component;
        }
    }

    private final Map<String, Map<Fact, ReferenceRow>> facts = new HashMap<>();

    private FactTable() {}

    static FactTable of(List<ReferenceRow> rows, Set<String> materials) {
        FactTable table = new FactTable();
        for (ReferenceRow row : rows) {
            String material = row.required("material_key");
            if (!materials.contains(material)) {
                throw row.fault("material " + material + " has no card");
            }
            row.required("source");
            Map<Fact, ReferenceRow> known = table.facts.computeIfAbsent(material, key -> new LinkedHashMap<>());
            if (known.put(row.choice("fact", Fact.class), row) != null) {
                throw row.fault(row.text("fact") + " of " + material + " appears twice");
            }
        }
        return table;
    }

    Optional<PercentRange> percent(String material, Fact fact) {
        return row(material, fact).map(row -> Ranges.percent(row, "lower", "upper"));
    }

    Optional<Interval> interval(String material, Fact fact) {
        return row(material, fact).map(row -> filled(row, Ranges.interval(row, "lower", "upper")));
    }

    /** A figure that is one number: both columns hold it. */
    Optional<Double> point(String material, Fact fact) {
        return row(material, fact).map(row -> {
            Interval range = filled(row, Ranges.interval(row, "lower", "upper"));
            if (!range.isPoint()) {
                throw row.fault(row.text("fact") + " must be one figure, in both columns");
            }
            return range.low();
        });
    }

    Optional<Strength> strength(String material) {
        return row(material, Fact.STRENGTH_PERCENT)
                .map(row -> new Strength(
                        Ranges.percent(row, "lower", "upper"),
                        row.choice("basis", Strength.Basis.class),
                        row.required("of")));
    }

    /** Adds the source of each figure under the name of the card's component. */
    void addSources(String material, Map<String, String> sources) {
        facts.getOrDefault(material, Map.of())
                .forEach((fact, row) -> sources.put(fact.component, row.required("source")));
    }

    private Optional<ReferenceRow> row(String material, Fact fact) {
        return Optional.ofNullable(facts.getOrDefault(material, Map.of()).get(fact));
    }

    private static Interval filled(ReferenceRow row, Optional<Interval> range) {
        return range.orElseThrow(() -> row.fault(row.text("fact") + " has no figure"));
    }
}
