package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;

/** Answers one JSON object a line; a line that cannot be read is answered with what is wrong, and the rest goes on. */
final class JsonLines implements Answering {
    /** At least one line could not be read; the others were answered. */
    static final int SOME_UNREADABLE = 3;

    private final Function<JsonNode, ObjectNode> answer;

    /** @param answer may refuse with an {@link IllegalArgumentException} that says why */
    JsonLines(Function<JsonNode, ObjectNode> answer) {
        this.answer = answer;
    }

    @Override
    public int answer(InputStream problems, PrintWriter out, PrintWriter err) throws IOException {
        int status = 0;
        BufferedReader lines = new BufferedReader(new InputStreamReader(problems, StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (!line.isBlank() && !answered(line, out)) {
                status = SOME_UNREADABLE;
            }
        }
        return status;
    }

    private boolean answered(String line, PrintWriter out) throws IOException {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        boolean sound = true;
        try {
            JsonNode asked = Json.read(line);
            if (asked.has("id")) {
                said.set("id", asked.get("id"));
            }
            said.setAll(answer.apply(asked));
        } catch (JsonProcessingException broken) {
            sound = false;
            said.put("error", "this line is not JSON: " + broken.getOriginalMessage());
        } catch (IllegalArgumentException refused) {
            sound = false;
            said.put("error", String.valueOf(refused.getMessage()));
        }
        out.println(Json.write(said));
        return sound;
    }
}
