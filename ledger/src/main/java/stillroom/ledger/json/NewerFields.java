package stillroom.ledger.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * Fields that a newer version wrote into a record, carried over when this version writes the record again. They are what an
 * older text holds and this version, reading it and writing it, leaves out.
 */
final class NewerFields {
    /** By which the elements of a list are found again; others by their place, where the list is as long as before. */
    private static final List<String> NAMES = List.of("id", "key", "lineId", "code", "name");

    private NewerFields() {}

    /**
     * Puts into {@code now} what {@code before} has beyond {@code known}.
     *
     * @param before as it was stored
     * @param known the same as this version reads and writes it
     * @param now what is to be stored; changed
     */
    static void carry(JsonNode before, JsonNode known, JsonNode now) {
        if (before instanceof ObjectNode old && known instanceof ObjectNode plain && now instanceof ObjectNode into) {
            old.properties().forEach(field -> {
                JsonNode here = plain.get(field.getKey());
                if (here != null) {
                    carry(field.getValue(), here, into.path(field.getKey()));
                } else if (!into.has(field.getKey()) && says(field.getValue())) {
                    into.set(field.getKey(), field.getValue());
                }
            });
        } else if (before instanceof ArrayNode old
                && known instanceof ArrayNode plain
                && now instanceof ArrayNode into
                && old.size() == plain.size()) {
            for (int place = 0; place < old.size(); place++) {
                int at = place;
                element(plain.get(place), place, plain.size(), into)
                        .ifPresent(element -> carry(old.get(at), plain.get(at), element));
            }
        }
    }

    /** What is empty is left out by every version, and is no field of a newer one. */
    private static boolean says(JsonNode value) {
        boolean container = value.isContainerNode() && value.isEmpty();
        return !value.isNull()
                && !container
                && !(value.isTextual() && value.textValue().isEmpty());
    }

    private static Optional<JsonNode> element(JsonNode element, int place, int size, ArrayNode among) {
        for (String name : NAMES) {
            if (element.path(name).isValueNode()) {
                for (JsonNode one : among) {
                    if (element.get(name).equals(one.get(name))) {
                        return Optional.of(one);
                    }
                }
                return Optional.empty();
            }
        }
        return among.size() == size ? Optional.of(among.get(place)) : Optional.empty();
    }
}
