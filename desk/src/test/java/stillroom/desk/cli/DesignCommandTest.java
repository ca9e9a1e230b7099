package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class DesignCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private record Ran(int status, JsonNode answer, String said) {}

    private Ran run(String problem) throws IOException {
        Path file = Files.writeString(folder.resolve("problem.json"), problem);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLine(new DesignCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err, true))
                .execute(file.toString());
        return new Ran(status, JSON.readTree(out.toString()), err.toString());
    }

    @Test
    void theExampleOfTheDocumentIsAnswered() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "commands.md"));
        String after = document.substring(document.indexOf("## design"));
        Ran ran = run(after.split("```json\n")[1].split("```")[0]);
        assertThat(ran.status()).isZero();
        assertThat(ran.answer().path("design")).hasSize(15);
        assertThat(ran.answer().path("efficiency").asDouble()).isBetween(0.9, 1.0 + 1e-9);
        assertThat(ran.answer().path("id").asText()).isEqualTo("any");
    }

    @Test
    void problemsByNameAreAnsweredByName() throws IOException {
        Ran ran = run("{\"a\": {\"q\": 3, \"n\": 10}, \"b\": {\"q\": 2, \"n\": 3,\n \"lower\": [0.2, 0.2]}}");
        assertThat(ran.answer().path("a").path("D").asDouble()).isGreaterThan(0.0396850262);
        assertThat(ran.answer().path("b").path("design")).hasSize(3);
    }

    @Test
    void theSameSeedGivesTheSameAnswerWithoutAClock() throws IOException {
        String problem =
                "{\"q\": 8, \"n\": 40, \"upper\": [0.4, 0.3, 0.3, 0.3, 0.25, 0.25, 0.2, 0.2], \"effort\": 0.2}";
        JsonNode first = run(problem).answer();
        JsonNode second = run(problem).answer();
        assertThat(first.path("settings").path("stoppedByLimit").asBoolean())
                .describedAs("hard enough to be stopped by the count")
                .isTrue();
        for (String field : new String[] {"D", "DBound", "design", "runs", "settings"}) {
            assertThat(second.path(field)).describedAs(field).isEqualTo(first.path(field));
        }
    }

    @Test
    void constraintsMayBeWrittenInSeveralWays() throws IOException {
        String[] ways = {
            "{\"coefficients\": [1, 1, 0], \"max\": 0.6}",
            "{\"coefficients\": {\"x1\": 1, \"x2\": 1}, \"op\": \"<=\", \"value\": 0.6}",
            "[1, 1, 0, null, 0.6]",
            "\"x1 + x2 <= 0.6\""
        };
        double first = 0;
        for (String way : ways) {
            double d = run("{\"q\": 3, \"n\": 9, \"constraints\": [" + way + "]}")
                    .answer()
                    .path("D")
                    .asDouble();
            first = first == 0 ? d : first;
            assertThat(d).describedAs(way).isEqualTo(first).isPositive();
        }
    }

    @Test
    void aListIsAnsweredByAList() throws IOException {
        JsonNode answers = run("[{\"q\": 3, \"n\": 10}, {\"q\": 2, \"n\": 4}]").answer();
        assertThat(answers.isArray()).isTrue();
        assertThat(answers).hasSize(2);
        assertThat(answers.get(1).path("design")).hasSize(4);
    }

    @Test
    void aFieldThatMeansNothingIsSaid() throws IOException {
        assertThat(run("{\"q\": 3, \"n\": 9, \"lowr\": [0.1, 0, 0]}")
                        .answer()
                        .path("notes")
                        .path(0)
                        .asText())
                .contains("lowr");
        assertThat(run("{\"q\": 3, \"n\": 9}").answer().has("notes")).isFalse();
    }

    @Test
    void aDesignForPredictionsIsJudgedByItsBound() throws IOException {
        JsonNode answer = run("{\"q\": 3, \"n\": 12, \"upper\": [0.5, 0.6, 0.7], \"criterion\": \"I\"}")
                .answer();
        assertThat(answer.path("meanPredictionVarianceIs").asText()).isEqualTo("exact");
        assertThat(answer.path("IEfficiency").asDouble()).isBetween(0.8, 1.0);
    }

    @Test
    void whatHasNoAnswerIsSaidAndGivesAnExitStatus() throws IOException {
        String[] asked = {
            "{\"q\": 3, \"n\": 8, \"lower\": [0.5, 0.4, 0.3]}",
            "{\"q\": 3, \"n\": 5}",
            "{\"q\": 3, \"n\": 8, \"upper\": [0.5, 2, 1]}",
            "{\"q\": 3, \"n\": 8, \"constraints\": [\"x9 < 1\"]}",
            "{\"q\": 3, \"n\": 9, \"seed\": \"x\"}",
            "{\"q\": 3, \"n\": -3}",
            "",
            "{\"q\": 3, \"n\": "
        };
        for (String problem : asked) {
            Ran ran = run(problem);
            assertThat(ran.status()).describedAs(problem).isEqualTo(3);
            assertThat(ran.answer().path("error").asText()).describedAs(problem).isNotBlank();
            assertThat(ran.said()).isNotBlank();
        }
    }
}
