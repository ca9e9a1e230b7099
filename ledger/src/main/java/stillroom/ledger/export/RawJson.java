package stillroom.ledger.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;

/** JSON moved to the letter: numbers keep the digits in which they were written. */
final class RawJson {
    private RawJson() {}

    /** The value that the parser stands on, on one line without blanks. */
    static String compact(JsonFactory json, JsonParser in) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = json.createGenerator(text)) {
            copy(in, out);
        }
        return text.toString();
    }

    /** Copies the value that the parser stands on; afterwards it stands on its last token. */
    static void copy(JsonParser in, JsonGenerator out) throws IOException {
        int depth = 0;
        do {
            JsonToken token = in.currentToken();
            depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
            write(token, in, out);
        } while (depth > 0 && in.nextToken() != null);
    }

    private static void write(JsonToken token, JsonParser in, JsonGenerator out) throws IOException {
        switch (token) {
            case START_OBJECT -> out.writeStartObject();
            case END_OBJECT -> out.writeEndObject();
            case START_ARRAY -> out.writeStartArray();
            case END_ARRAY -> out.writeEndArray();
            case FIELD_NAME -> out.writeFieldName(in.currentName());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> out.writeNumber(in.getText());
            case VALUE_TRUE -> out.writeBoolean(true);
            case VALUE_FALSE -> out.writeBoolean(false);
            case VALUE_NULL -> out.writeNull();
            default -> out.writeString(in.getText());
        }
    }

    /** Whether moving a text would change it; such a one has to travel as a text. */
    static boolean changes(JsonFactory json, String text) {
        try (JsonParser in = json.createParser(text)) {
            in.nextToken();
            return in.currentToken() != JsonToken.START_OBJECT
                    || !compact(json, in).equals(text)
                    || in.nextToken() != null;
        } catch (IOException noJson) {
            return true;
        }
    }
}
