package stillroom.ledger.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A text is not the JSON that was asked for: one sentence with the place. */
public final class UnreadableJson extends RuntimeException {
    private static final long serialVersionUID = 1;

    UnreadableJson(String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
    }

    static UnreadableJson from(JsonProcessingException e) {
        return new UnreadableJson("The JSON cannot be read" + place(e) + ": " + firstLine(e.getOriginalMessage()), e);
    }

    private static String place(JsonProcessingException e) {
        String path = e instanceof JsonMappingException mapping
                ? mapping.getPath().stream()
                        .map(step -> step.getFieldName() == null ? "[" + step.getIndex() + "]" : step.getFieldName())
                        .collect(Collectors.joining("."))
                : "";
        JsonLocation at = e.getLocation();
        String line = at == null ? "" : " in line " + at.getLineNr();
        return line + (path.isEmpty() ? "" : " at " + path);
    }

    private static String firstLine(@Nullable String message) {
        return message == null ? "no reason given" : message.lines().findFirst().orElse("");
    }
}
