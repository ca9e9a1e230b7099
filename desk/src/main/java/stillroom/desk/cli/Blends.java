package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Answers blending problems, one answer a line. */
final class Blends implements Answering {
    static final double USUAL_SECONDS = 60;

    private final double seconds;
    private final BlendStatus status = new BlendStatus();

    /** @param seconds time limit of a problem that states none */
    Blends(double seconds) {
        this.seconds = seconds;
    }

    /** Problems one after the other, on one line each or on several. */
    @Override
    public int answer(InputStream problems, PrintWriter out, PrintWriter err) throws IOException {
        try (Json.Values values = new Json.Values(problems)) {
            for (Optional<JsonNode> one = values.next(); one.isPresent(); one = values.next()) {
                answer(one.get(), out);
            }
        } catch (JsonProcessingException broken) {
            refuse("from here on this is not JSON: " + broken.getOriginalMessage(), out);
        }
        return status.exit();
    }

    int answer(JsonNode asked, PrintWriter out) throws IOException {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        if (asked.has("id")) {
            said.set("id", asked.get("id"));
        }
        try {
            said.setAll(BlendWriter.write(BlendReader.read(asked, seconds), status, System::nanoTime));
            out.println(Json.write(said));
            out.flush();
        } catch (IllegalArgumentException refused) {
            refuse(said, refused.getMessage(), out);
        }
        return status.exit();
    }

    int refuse(@Nullable String why, PrintWriter out) throws IOException {
        return refuse(JsonNodeFactory.instance.objectNode(), why, out);
    }

    private int refuse(ObjectNode said, @Nullable String why, PrintWriter out) throws IOException {
        status.unreadable();
        said.put("error", String.valueOf(why));
        out.println(Json.write(said));
        return status.exit();
    }
}
