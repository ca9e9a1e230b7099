package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** How an object of the file names a material or substance: by key, by INCI name or by CAS number. */
final class NamedBy {
    private NamedBy() {}

    /**
     * The first that stands there; empty, with the problem noted, where none does.
     *
     * @param keyField the field that holds a key
     */
    static String read(Fields fields, String keyField) {
        String key = fields.text(keyField);
        String inci = fields.text("inci");
        String cas = fields.text("cas");
        List<String> named =
                List.of(key, inci, cas).stream().filter(one -> !one.isEmpty()).toList();
        if (named.isEmpty()) {
            fields.problem(keyField, "one of " + keyField + ", inci or cas is missing");
            return "";
        }
        if (named.size() > 1) {
            fields.problem(keyField, "only one of " + keyField + ", inci and cas names a thing; put others in a note");
        }
        if (key.startsWith(FormulaFile.BY_INCI) || key.startsWith(FormulaFile.BY_CAS)) {
            fields.problem(keyField, keyField + " must be a key or a name");
        }
        if (!key.isEmpty()) {
            return key;
        }
        return inci.isEmpty() ? FormulaFile.BY_CAS + cas : FormulaFile.BY_INCI + inci;
    }

    static void write(ObjectNode into, String keyField, String named) {
        if (named.startsWith(FormulaFile.BY_INCI)) {
            into.put("inci", named.substring(FormulaFile.BY_INCI.length()));
        } else if (named.startsWith(FormulaFile.BY_CAS)) {
            into.put("cas", named.substring(FormulaFile.BY_CAS.length()));
        } else {
            into.put(keyField, named);
        }
    }

    /** The name without the way of naming, as a sentence says it. */
    static String shown(String named) {
        String bare = named.startsWith(FormulaFile.BY_INCI)
                ? named.substring(FormulaFile.BY_INCI.length())
                : named.startsWith(FormulaFile.BY_CAS) ? "CAS " + named.substring(FormulaFile.BY_CAS.length()) : named;
        return Shown.brief(bare);
    }
}
