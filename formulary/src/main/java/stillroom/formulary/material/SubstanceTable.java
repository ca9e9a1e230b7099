package stillroom.formulary.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.reference.ReferenceRow;

/** Rows of {@code substances.csv} as records. */
final class SubstanceTable {
    static final String[] COLUMNS = {
        "key",
        "inci_name",
        "cas",
        "molar_mass_g_per_mol",
        "charge",
        "surfactant",
        "charge_mol_per_kg",
        "acid_key",
        "parent",
        "parent_units",
        "counter_ion",
        "counter_ion_units",
        "hlb_lower",
        "hlb_upper",
        "required_hlb_lower",
        "required_hlb_upper",
        "tags",
        "source"
    };

    private SubstanceTable() {}

    static Map<String, Substance> of(List<ReferenceRow> rows) {
        Map<String, Substance> substances = new LinkedHashMap<>();
        for (ReferenceRow row : rows) {
            Substance substance = substance(row);
            if (substances.put(substance.key(), substance) != null) {
                throw row.fault("substance " + substance.key() + " appears twice");
            }
        }
        checkParents(rows, substances);
        return substances;
    }

    private static void checkParents(List<ReferenceRow> rows, Map<String, Substance> substances) {
        for (ReferenceRow row : rows) {
            String parent = row.text("parent");
            if (!parent.isEmpty() && !substances.containsKey(parent)) {
                throw row.fault("parent " + parent + " is not a known substance");
            }
        }
    }

    private static Substance substance(ReferenceRow row) {
        return new Substance(
                row.required("key"),
                row.required("inci_name"),
                row.list("cas"),
                row.number("molar_mass_g_per_mol"),
                row.choice("charge", ChargeClass.class),
                row.yesNo("surfactant"),
                row.optional("acid_key"),
                row.list("tags"),
                row.required("source"),
                parent(row),
                Ranges.interval(row, "hlb_lower", "hlb_upper"),
                Ranges.interval(row, "required_hlb_lower", "required_hlb_upper"),
                row.number("charge_mol_per_kg"));
    }

    private static Optional<Parent> parent(ReferenceRow row) {
        Optional<String> parent = row.optional("parent");
        if (parent.isEmpty()) {
            return Optional.empty();
        }
        double units = row.requiredDecimal("parent_units").doubleValue();
        if (row.optional("counter_ion").isEmpty()) {
            return Optional.of(Parent.ester(parent.get(), units));
        }
        return Optional.of(Parent.salt(
                parent.get(),
                units,
                row.choice("counter_ion", CounterIon.class),
                row.requiredDecimal("counter_ion_units").doubleValue()));
    }
}
