package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The light reader and writer against Jackson's own. */
class JsonTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "[]",
                "null",
                "{\"a\": [1, -2, 3000000000, 123456789012345678901234567890, 0.1, 1e-300, 5E300, true, false, null]}",
                "{\"nested\": {\"deep\": [[[]], {\"x\": {}}]}, \"text\": \"\\u00e4 \\\" \\\\ \\n \\u2028 \\ud83e\\uddea\"}",
                "{\"twice\": 1, \"twice\": 2}"
            })
    void readsAndWritesAsTheObjectMapper(String text) throws IOException {
        JsonNode tree = Json.read(text);
        assertThat(tree).isEqualTo(MAPPER.readTree(text));
        assertThat(Json.write(tree)).isEqualTo(MAPPER.writeValueAsString(tree));
    }

    @Test
    void valuesStandOneAfterTheOtherOrInAList() throws IOException {
        assertThat(values("{\"a\": 1} {\"a\":\n2}[{\"a\": 3}, 4]"))
                .hasSize(4)
                .last()
                .isEqualTo(MAPPER.readTree("4"));
        assertThat(values("")).isEmpty();
    }

    private static List<JsonNode> values(String text) throws IOException {
        List<JsonNode> all = new ArrayList<>();
        try (Json.Values values = new Json.Values(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))) {
            for (Optional<JsonNode> one = values.next(); one.isPresent(); one = values.next()) {
                all.add(one.get());
            }
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"a\": }", "{\"a\": 1", "[1, 2", "{'a': 1}", "{\"a\": NaN}", "}"})
    void whatIsNotJsonIsRefused(String text) {
        assertThatThrownBy(() -> Json.read(text)).isInstanceOf(JsonProcessingException.class);
    }
}
