package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;

/** Answers one JSON object a line; a line that cannot be read is answered with what is wrong, and the rest goes on. */
final class JsonLines {
    /** At least one line could not be read; the others were answered. */
    static final int SOME_UNREADABLE = 3;

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Function<JsonNode, ObjectNode> answer;

    /** @param answer may refuse with an {@link IllegalArgumentException} that says why */
    JsonLines(Function<JsonNode, ObjectNode> answer) {
        this.answer = answer;
    }

    /** @param file or {@code -} for standard input */
    int run(String file, PrintWriter out) throws IOException {
        int status = 0;
        try (BufferedReader lines = open(file)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !answered(line, out)) {
                    status = SOME_UNREADABLE;
                }
            }
        }
        out.flush();
        return status;
    }

    private static BufferedReader open(String file) throws IOException {
        return file.equals("-")
                ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                : Files.newBufferedReader(Path.of(file));
    }

    private boolean answered(String line, PrintWriter out) throws JsonProcessingException {
        ObjectNode said = JSON.createObjectNode();
        boolean sound = true;
        try {
            JsonNode asked = JSON.readTree(line);
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
        out.println(JSON.writeValueAsString(said));
        return sound;
    }
}
