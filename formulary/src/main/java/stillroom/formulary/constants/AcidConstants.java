package stillroom.formulary.constants;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** All acids and bases of the table, by key. Immutable. */
public final class AcidConstants {

    private final Map<String, AcidConstant> byKey;

    AcidConstants(Map<String, AcidConstant> byKey) {
        this.byKey = new LinkedHashMap<>(byKey);
    }

    /** The row with a key. */
    public Optional<AcidConstant> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** All rows in the order of the file. */
    public Collection<AcidConstant> all() {
        return java.util.Collections.unmodifiableCollection(byKey.values());
    }
}
