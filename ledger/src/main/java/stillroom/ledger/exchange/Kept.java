package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A field that this version does not know, kept so that writing the file again does not lose it.
 *
 * @param path names of the fields that lead to it; an element of a list by its id or key, else by {@code @} and its index
 * @param json its value as JSON text
 */
public record Kept(List<String> path, String json) {
    private static final List<String> IDENTIFIERS = List.of("id", "key");

    public Kept {
        path = List.copyOf(path);
    }

    /** How an element of a list is found again. */
    static String step(JsonNode element, int index) {
        for (String name : IDENTIFIERS) {
            if (element.path(name).isTextual() && !element.path(name).asText().isBlank()) {
                return element.path(name).asText();
            }
        }
        return "@" + index;
    }

    /** Puts the value where it stood; where that place is gone, nothing happens. */
    void putInto(ObjectNode root, JsonNode value) {
        JsonNode place = root;
        for (String step : path.subList(0, path.size() - 1)) {
            @Nullable JsonNode next = place.isArray() ? element((ArrayNode) place, step) : place.get(step);
            if (next == null) {
                return;
            }
            place = next;
        }
        String name = path.get(path.size() - 1);
        if (place instanceof ObjectNode object && !object.has(name)) {
            object.set(name, value);
        }
    }

    private static @Nullable JsonNode element(ArrayNode list, String step) {
        for (int i = 0; i < list.size(); i++) {
            if (step(list.get(i), i).equals(step) || step.equals("@" + i)) {
                return list.get(i);
            }
        }
        return null;
    }
}
