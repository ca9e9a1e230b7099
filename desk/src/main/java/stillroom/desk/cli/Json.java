package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.math.BigInteger;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * Reads and writes trees of JSON by the parser and generator alone: an object mapper, which can do this and very much else,
 * takes longer to set up than a problem to solve.
 */
final class Json {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Json() {}

    /** The values of a stream, one after the other; those of a list as if they stood alone. */
    static final class Values implements AutoCloseable {
        private final JsonParser parser;

        Values(InputStream in) throws IOException {
            parser = FACTORY.createParser(in);
        }

        /** Empty at the end. */
        Optional<JsonNode> next() throws IOException {
            JsonToken token = parser.nextToken();
            while (token == JsonToken.START_ARRAY || token == JsonToken.END_ARRAY) {
                token = parser.nextToken();
            }
            return token == null ? Optional.empty() : Optional.of(value(parser, token));
        }

        /** The same, with lists left whole. */
        Optional<JsonNode> nextWhole() throws IOException {
            JsonToken token = parser.nextToken();
            return token == null ? Optional.empty() : Optional.of(value(parser, token));
        }

        @Override
        public void close() throws IOException {
            parser.close();
        }
    }

    /** @return the first value of a text; a missing one where it holds none */
    static JsonNode read(String text) throws IOException {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonToken token = parser.nextToken();
            return token == null ? NODES.missingNode() : value(parser, token);
        }
    }

    private static JsonNode value(JsonParser parser, JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_NUMBER_INT -> whole(parser);
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            default -> throw new NoSuchElementException("no value begins with " + token);
        };
    }

    private static ObjectNode object(JsonParser parser) throws IOException {
        ObjectNode object = NODES.objectNode();
        for (String name = parser.nextFieldName(); name != null; name = parser.nextFieldName()) {
            object.set(name, value(parser, parser.nextToken()));
        }
        return object;
    }

    private static ArrayNode array(JsonParser parser) throws IOException {
        ArrayNode array = NODES.arrayNode();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            array.add(value(parser, token));
        }
        return array;
    }

    private static JsonNode whole(JsonParser parser) throws IOException {
        return switch (parser.getNumberType()) {
            case INT -> NODES.numberNode(parser.getIntValue());
            case LONG -> NODES.numberNode(parser.getLongValue());
            default -> NODES.numberNode(new BigInteger(parser.getText()));
        };
    }

    static String write(JsonNode tree) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            write(tree, generator);
        }
        return text.toString();
    }

    private static void write(JsonNode node, JsonGenerator into) throws IOException {
        switch (node.getNodeType()) {
            case OBJECT -> {
                into.writeStartObject();
                for (Iterator<Map.Entry<String, JsonNode>> fields = node.fields(); fields.hasNext(); ) {
                    Map.Entry<String, JsonNode> field = fields.next();
                    into.writeFieldName(field.getKey());
                    write(field.getValue(), into);
                }
                into.writeEndObject();
            }
            case ARRAY -> {
                into.writeStartArray();
                for (JsonNode element : node) {
                    write(element, into);
                }
                into.writeEndArray();
            }
            case STRING -> into.writeString(node.textValue());
            case BOOLEAN -> into.writeBoolean(node.booleanValue());
            case NUMBER -> number(node, into);
            default -> into.writeNull();
        }
    }

    private static void number(JsonNode node, JsonGenerator into) throws IOException {
        switch (node.numberType()) {
            case INT, LONG -> into.writeNumber(node.longValue());
            case BIG_INTEGER -> into.writeNumber(node.bigIntegerValue());
            default -> into.writeNumber(node.doubleValue());
        }
    }
}
