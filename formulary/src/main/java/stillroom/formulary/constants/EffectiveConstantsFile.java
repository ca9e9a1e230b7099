package stillroom.formulary.constants;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** Reads the table of effective constants. */
public final class EffectiveConstantsFile {
    private EffectiveConstantsFile() {}

    /** The table of this jar, by substance. */
    public static Map<String, EffectiveConstant> shipped() {
        Map<String, EffectiveConstant> constants = new LinkedHashMap<>();
        for (ReferenceRow row : ReferenceTable.read(
                "constants/effective.csv",
                "substance",
                "charge_fully_protonated",
                "pka_low",
                "pka_high",
                "spread",
                "groups_mol_per_kg",
                "groups_mol_per_kg_high",
                "cations",
                "source")) {
            constants.put(row.required("substance"), constant(row));
        }
        return constants;
    }

    private static EffectiveConstant constant(ReferenceRow row) {
        Optional<Double> groups = row.number("groups_mol_per_kg");
        return new EffectiveConstant(
                row.required("substance"),
                row.requiredDecimal("charge_fully_protonated").intValueExact(),
                steps(row),
                row.requiredDecimal("spread").doubleValue(),
                groups.map(low ->
                        new Interval(low, row.number("groups_mol_per_kg_high").orElse(low))),
                row.requiredDecimal("cations").doubleValue(),
                row.required("source"));
    }

    private static List<Interval> steps(ReferenceRow row) {
        String[] low = row.required("pka_low").split(";", -1);
        String[] high = row.required("pka_high").split(";", -1);
        if (low.length != high.length) {
            throw row.fault("as many lower as upper constants are needed");
        }
        List<Interval> steps = new ArrayList<>();
        for (int i = 0; i < low.length; i++) {
            steps.add(new Interval(Double.parseDouble(low[i]), Double.parseDouble(high[i])));
        }
        return steps;
    }
}
