package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Texts that are left out where they are empty. */
final class Texts {
    private Texts() {}

    static void put(ObjectNode into, String name, String text) {
        if (!text.isEmpty()) {
            into.put(name, text);
        }
    }
}
