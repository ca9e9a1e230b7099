package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.Map;

/**
 * JSON that reads and compares well: an object inside a list stands on one line, unless it holds a list of objects itself.
 * Depends on nothing but the value, never on its width.
 */
final class Layout {
    private static final String INDENT = "  ";

    private final StringBuilder text = new StringBuilder();

    private Layout() {}

    static String of(ObjectNode root) {
        Layout layout = new Layout();
        layout.spread(root, "");
        return layout.text.append('\n').toString();
    }

    private void value(JsonNode value, String margin, boolean inList) {
        boolean spread = value instanceof ObjectNode object
                ? holdsObjects(object) || !inList && margin.length() <= INDENT.length() && hasList(object)
                : value instanceof ArrayNode list && isOfObjects(list);
        if (spread) {
            spread(value, margin);
        } else {
            flat(value);
        }
    }

    private static boolean isOfObjects(JsonNode value) {
        return value.isArray() && value.size() > 0 && value.get(0).isObject();
    }

    private static boolean holdsObjects(ObjectNode object) {
        for (JsonNode one : object) {
            if (isOfObjects(one)) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasList(ObjectNode object) {
        for (JsonNode one : object) {
            if (one.isContainerNode()) {
                return true;
            }
        }
        return object.size() > 2;
    }

    private void spread(JsonNode value, String margin) {
        String deeper = margin + INDENT;
        text.append(value.isObject() ? '{' : '[');
        String separator = "\n";
        if (value instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> field : object.properties()) {
                text.append(separator)
                        .append(deeper)
                        .append(quoted(field.getKey()))
                        .append(": ");
                value(field.getValue(), deeper, false);
                separator = ",\n";
            }
        } else {
            for (JsonNode one : value) {
                text.append(separator).append(deeper);
                value(one, deeper, true);
                separator = ",\n";
            }
        }
        text.append('\n').append(margin).append(value.isObject() ? '}' : ']');
    }

    private void flat(JsonNode value) {
        if (value instanceof ObjectNode object) {
            text.append('{');
            for (Iterator<Map.Entry<String, JsonNode>> each = object.fields(); each.hasNext(); ) {
                Map.Entry<String, JsonNode> field = each.next();
                text.append(' ').append(quoted(field.getKey())).append(": ");
                flat(field.getValue());
                text.append(each.hasNext() ? "," : " ");
            }
            text.append('}');
        } else if (value instanceof ArrayNode list) {
            text.append('[');
            for (Iterator<JsonNode> each = list.iterator(); each.hasNext(); ) {
                flat(each.next());
                text.append(each.hasNext() ? ", " : "");
            }
            text.append(']');
        } else if (value.isBigDecimal()) {
            text.append(value.decimalValue().toPlainString());
        } else {
            text.append(JsonText.text(value));
        }
    }

    private static String quoted(String name) {
        return JsonText.text(com.fasterxml.jackson.databind.node.TextNode.valueOf(name));
    }
}
