package stillroom.formulary.material;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
            Map<Fact, ReferenceRow> known = table.facts.get(material);
            if (known == null) {
                known = new EnumMap<>(Fact.class);
                table.facts.put(material, known);
            }
            if (known.put(row.choice("fact", Fact.class), row) != null) {
                throw row.fault(row.text("fact") + " of " + material + " appears twice");
            }
        }
        return table;
    }

    Optional<PercentRange> percent(String material, Fact fact) {
        ReferenceRow row = row(material, fact);
        return row == null ? Optional.empty() : Optional.of(Ranges.percent(row, "lower", "upper"));
    }

    Optional<Interval> interval(String material, Fact fact) {
        ReferenceRow row = row(material, fact);
        return row == null ? Optional.empty() : Optional.of(filled(row));
    }

    /** A figure that is one number: both columns hold it. */
    Optional<Double> point(String material, Fact fact) {
        ReferenceRow row = row(material, fact);
        if (row == null) {
            return Optional.empty();
        }
        Interval range = filled(row);
        if (!range.isPoint()) {
            throw row.fault(row.text("fact") + " must be one figure, in both columns");
        }
        return Optional.of(range.low());
    }

    Optional<Strength> strength(String material) {
        ReferenceRow row = row(material, Fact.STRENGTH_PERCENT);
        return row == null
                ? Optional.empty()
                : Optional.of(new Strength(
                        Ranges.percent(row, "lower", "upper"),
                        row.choice("basis", Strength.Basis.class),
                        row.required("of")));
    }

    /** Adds the source of each figure under the name of the card's component. */
    void addSources(String material, Map<String, String> sources) {
        Map<Fact, ReferenceRow> known = facts.get(material);
        if (known != null) {
            for (Map.Entry<Fact, ReferenceRow> entry : known.entrySet()) {
                sources.put(entry.getKey().component, entry.getValue().required("source"));
            }
        }
    }

    private @Nullable ReferenceRow row(String material, Fact fact) {
        Map<Fact, ReferenceRow> known = facts.get(material);
        return known == null ? null : known.get(fact);
    }

    private static Interval filled(ReferenceRow row) {
        Optional<Interval> range = Ranges.interval(row, "lower", "upper");
        if (range.isEmpty()) {
            throw row.fault(row.text("fact") + " has no figure");
        }
        return range.get();
    }
}
