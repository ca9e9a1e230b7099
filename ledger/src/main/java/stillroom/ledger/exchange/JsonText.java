package stillroom.ledger.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** JSON from a stranger, within bounds, with the text line of each value. */
final class JsonText {
    /** Larger than any formula with all its materials by a factor of ten. */
    static final int MOST_BYTES = 2_000_000;

    private static final int DEEPEST = 40;
    private static final int LONGEST_TEXT = 20_000;
    private static final int LONGEST_NUMBER = 60;

    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxStringLength(LONGEST_TEXT)
                            .maxNumberLength(LONGEST_NUMBER)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private JsonText() {}

    /**
     * A value and where its parts stand.
     *
     * @param lines text line of each value by its JSON pointer
     */
    record Parsed(JsonNode root, Map<String, Integer> lines) {}

    /** @throws Unreadable with one sentence */
    static Parsed parse(byte[] text) {
        if (text.length > MOST_BYTES) {
            throw new Unreadable(0, "the file is larger than " + MOST_BYTES / 1_000_000 + " MB");
        }
        try {
            JsonNode root = MAPPER.readTree(text);
            if (root == null || root.isMissingNode()) {
                throw new Unreadable(0, "the file is empty");
            }
            return new Parsed(root, lines(text));
        } catch (JsonProcessingException broken) {
            int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNr();
            throw new Unreadable(line, "this is not JSON: " + reason(broken));
        } catch (IOException broken) {
            throw new Unreadable(0, "this is not text in UTF-8: " + broken.getMessage());
        }
    }

    static JsonNode value(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("not JSON: " + json, broken);
        }
    }

    static String text(JsonNode value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("cannot be written as JSON", broken);
        }
    }

    private static Map<String, Integer> lines(byte[] text) throws IOException {
        Map<String, Integer> lines = new HashMap<>();
        try (JsonParser parser = MAPPER.getFactory().createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token != JsonToken.FIELD_NAME && !token.isStructEnd()) {
                    lines.putIfAbsent(
                            pointer(parser), parser.currentTokenLocation().getLineNr());
                }
            }
        }
        return lines;
    }

    /** Of the value at which the parser stands; that of a begun object or list is its parent's current place. */
    private static String pointer(JsonParser parser) {
        var context = parser.getParsingContext();
        boolean begun = parser.currentToken().isStructStart();
        return (begun && context.getParent() != null ? context.getParent() : context)
                .pathAsPointer()
                .toString();
    }

    private static String reason(JsonProcessingException broken) {
        String message = broken.getOriginalMessage();
        String first = message == null
                ? "no reason given"
                : message.lines().findFirst().orElse("");
        int detail = first.indexOf(" (start marker at");
        return detail < 0 ? first : first.substring(0, detail);
    }

    /** Not even JSON, or out of bounds. */
    static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final int line;

        Unreadable(int line, String sentence) {
            super(sentence);
            this.line = line;
        }

        FileProblem problem() {
            return new FileProblem(line, "", String.valueOf(getMessage()));
        }
    }
}
