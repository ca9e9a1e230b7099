package stillroom.formulary.material;

import java.util.HashMap;
import java.util.Map;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** Common names and short forms by which a substance is also called. */
public final class OtherNames {
    private OtherNames() {}

    /** INCI name by other name. */
    public static Map<String, String> load() {
        Map<String, String> inciByName = new HashMap<>();
        for (ReferenceRow row : ReferenceTable.read("materials/other-names.csv", "other_name", "inci_name", "source")) {
            inciByName.put(row.required("other_name"), row.required("inci_name"));
        }
        return Map.copyOf(inciByName);
    }
}
