package stillroom.formulary.material;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.formulary.reference.ReferenceRow;

/** Rows of {@code compositions.csv}, gathered by material. */
final class CompositionTable {
    static final String[] COLUMNS = {
        "material_key", "substance", "lower_percent", "nominal_percent", "upper_percent", "role", "source"
    };

    private final Map<String, List<Constituent>> constituents = new LinkedHashMap<>();
    private final Map<String, String> sources = new LinkedHashMap<>();

    private CompositionTable() {}

    static CompositionTable of(List<ReferenceRow> rows, Set<String> materials, Set<String> substances) {
        CompositionTable table = new CompositionTable();
        for (ReferenceRow row : rows) {
            String material = row.required("material_key");
            if (!materials.contains(material)) {
                throw row.fault("material " + material + " has no card");
            }
            String substance = row.required("substance");
            if (!substances.contains(substance)) {
                throw row.fault("substance " + substance + " is not in substances.csv");
            }
            table.add(material, row);
        }
        return table;
    }

    List<Constituent> constituents(String material) {
        return constituents.getOrDefault(material, List.of());
    }

    /** Where the composition of a material comes from, each source once; empty where there is no composition. */
    String source(String material) {
        return sources.getOrDefault(material, "");
    }

    private void add(String material, ReferenceRow row) {
        List<Constituent> known = constituents.get(material);
        if (known == null) {
            known = new ArrayList<>();
            constituents.put(material, known);
        }
        known.add(
                new Constituent(row.required("substance"), fraction(row), row.choice("role", Constituent.Role.class)));
        String source = row.required("source");
        String all = sources.get(material);
        if (all == null) {
            sources.put(material, source);
        } else if (!all.contains(source)) {
            sources.put(material, all.concat(Material.SOURCE_GLUE).concat(source));
        }
    }

    private static MassFraction fraction(ReferenceRow row) {
        double lower = share(row, "lower_percent");
        double nominal = share(row, "nominal_percent");
        double upper = share(row, "upper_percent");
        if (!(0 <= lower && lower <= nominal && nominal <= upper && upper <= 1)) {
            throw row.fault("lower, nominal and upper percent must ascend within 0 to 100");
        }
        return new MassFraction(lower, nominal, upper);
    }

    /** Shifted in decimal, so that 35 % is the double nearest to 0.35. */
    private static double share(ReferenceRow row, String column) {
        BigDecimal percent = row.requiredDecimal(column);
        return percent.movePointLeft(2).doubleValue();
    }
}
