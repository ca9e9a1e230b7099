package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class BlendCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path PEERS = Path.of("..", "science", "src", "test", "resources", "engines", "blend");

    @TempDir
    Path folder;

    private record Ran(int status, List<JsonNode> answers) {}

    private static Ran run(String... arguments) throws IOException {
        StringWriter out = new StringWriter();
        int status =
                new CommandLine(new BlendCommand()).setOut(new PrintWriter(out)).execute(arguments);
        List<JsonNode> answers = new ArrayList<>();
        for (String line : out.toString().lines().toList()) {
            answers.add(JSON.readTree(line));
        }
        return new Ran(status, answers);
    }

    private Ran solve(String problems) throws IOException {
        return run(Files.writeString(folder.resolve("problems.json"), problems).toString());
    }

    /** GLPK 5.0 and CBC 2.10, proof gap 1e-9. */
    @Test
    void readsTwoFiles() throws IOException {
        String[] files = {
            "--materials",
            PEERS.resolve("materials.csv").toString(),
            "--limits",
            PEERS.resolve("limits.csv").toString()
        };
        Ran linear = run(files);
        assertThat(linear.answers().get(0).get("objective").asDouble()).isCloseTo(2.925797879, within(5e-10));
        Ran counted = run(files[0], files[1], files[2], files[3], "--at-most", "8");
        assertThat(counted.status()).isZero();
        JsonNode answer = counted.answers().get(0);
        assertThat(answer.get("status").asText()).isEqualTo("optimal");
        assertThat(answer.get("objective").asDouble()).isCloseTo(4.00767915403, within(5e-11));
        assertThat(answer.get("used").asInt()).isEqualTo(8);
        assertThat(answer.get("fractions")).hasSize(8);
        assertThat(answer.get("gap").asDouble()).isBetween(0.0, 1e-9);
    }

    @Test
    void answersTheExampleOfTheDocument() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "commands.md"));
        String example = document.substring(document.indexOf("## blend"))
                .split("```json\n")[1]
                .split("```")[0];
        Ran ran = solve(example);
        assertThat(ran.status()).isZero();
        JsonNode answer = ran.answers().get(0);
        // By hand: p2 needs 25.8; m2 brings 68.5 for 6.83 - 1.2 above m3, m1 89.5 for 18.03 - 1.2: m2 is the cheaper
        // way.
        double m2 = 25.8 / 68.5;
        assertThat(answer.get("id").asText()).isEqualTo("any");
        assertThat(answer.get("fractions").get("m2").asDouble()).isCloseTo(m2, within(1e-9));
        assertThat(answer.get("objective").asDouble()).isCloseTo(1.2 + m2 * (6.83 - 1.2), within(1e-9));
        assertThat(answer.get("limits").get(1).get("binding").asText()).isEqualTo("min");
        assertThat(answer.get("limits").get(1).get("shadowPrice").asDouble())
                .isCloseTo((6.83 - 1.2) / 68.5, within(1e-9));
    }

    @Test
    void saysWhyNotAndWhatWouldDo() throws IOException {
        Ran ran = solve("""
                {"materials":[{"name":"a","cost":1,"max":0.5,"properties":{"p":10}},{"name":"b","cost":2,"properties":{"p":0}}],
                 "limits":[{"property":"p","min":6}]}
                {"materials":[{"name":"a","max":0.4},{"name":"b","max":0.5}],"limits":[]}""");
        assertThat(ran.status()).isEqualTo(4);
        JsonNode first = ran.answers().get(0);
        assertThat(first.get("status").asText()).isEqualTo("infeasible");
        assertThat(first.get("conflict").findValuesAsText("requirement"))
                .containsExactlyInAnyOrder("material-max", "limit-min");
        assertThat(first.get("smallest").asBoolean()).isTrue();
        assertThat(first.get("oneAlone").findValuesAsText("to")).containsExactlyInAnyOrder("0.6", "5.0");
        assertThat(ran.answers().get(1).get("conflict")).hasSize(2);
    }

    @Test
    void goalsAreWeighed() throws IOException {
        String materials = """
                "materials":[{"name":"a","cost":1,"now":0.2,"properties":{"n":1}},{"name":"b","cost":2,"now":0.8,"properties":{"n":3}}]""";
        Ran ran = solve("{" + materials + ",\"goal\":{\"properties\":{\"n\":-1}}}{" + materials
                + ",\"goal\":{\"cost\":0.1,\"change\":1}}{" + materials + ",\"goal\":{\"cost\":3,\"change\":1}}");
        assertThat(ran.answers().get(0).get("fractions").get("b").asDouble()).isEqualTo(1);
        assertThat(ran.answers().get(1).get("fractions").get("a").asDouble()).isCloseTo(0.2, within(1e-9));
        assertThat(ran.answers().get(2).get("fractions").get("a").asDouble()).isEqualTo(1);
    }

    @Test
    void whatCannotBeReadIsNamed() throws IOException {
        Ran ran = solve("""
                {"materials":[]}
                {"materials":[{"name":"a"},{"name":"a"}]}
                {"materials":[{"name":"a"}],"limits":[{"property":"none","min":1}]}
                {"materials":[{"name":"a","max":"much"}]}
                {"materials":[{"name":"a","minIfUsed":0.5,"max":0.2},{"name":"b"}]}
                {"materials":[""");
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.answers()).hasSize(6);
        assertThat(ran.answers().get(0).get("error").asText()).contains("materials");
        assertThat(ran.answers().get(1).get("error").asText()).contains("\"a\"");
        assertThat(ran.answers().get(2).get("error").asText()).contains("\"none\"");
        assertThat(ran.answers().get(3).get("error").asText()).contains("max");
        assertThat(ran.answers().get(4).get("notes").get(0).asText()).contains("a cannot be used");
        assertThat(ran.answers().get(5).get("error").asText()).contains("not JSON");
    }

    @Test
    void outOfTimeItSaysWhatItKnows() throws IOException {
        String peers = BlendCsv.problem(PEERS.resolve("materials.csv"), PEERS.resolve("limits.csv"), 8)
                .put("timeLimitSeconds", 1e-9)
                .toString();
        Ran ran = solve(peers);
        assertThat(ran.status()).isEqualTo(5);
        assertThat(ran.answers().get(0).get("status").asText()).isEqualTo("stopped");
    }

    /** By a clock that goes on by a millisecond each time it is looked at: the time is over at the same step on every machine. */
    @Test
    void stoppedItSaysTheBestSoFarTheBoundAndTheGap() throws IOException {
        ObjectNode peers = BlendCsv.problem(PEERS.resolve("materials.csv"), PEERS.resolve("limits.csv"), 8);
        double optimum = 4.00767915403;
        double bound = 0;
        double gap = Double.POSITIVE_INFINITY;
        int withABlend = 0;
        ObjectNode said = stoppedAfter(peers, 1);
        for (int looks = 2; said.get("status").asText().equals("stopped"); looks += 2) {
            assertThat(said.get("bound").asDouble()).isBetween(bound, optimum);
            bound = said.get("bound").asDouble();
            assertThat(said.has("gap")).isEqualTo(said.has("objective"));
            if (said.has("objective")) {
                double objective = said.get("objective").asDouble();
                assertThat(said.get("cost").asDouble()).isCloseTo(objective, within(1e-9));
                assertThat(objective).isGreaterThan(optimum - 1e-9);
                assertThat(said.get("gap").asDouble())
                        .isEqualTo((objective - bound) / objective)
                        .isLessThanOrEqualTo(gap);
                gap = said.get("gap").asDouble();
                withABlend++;
            }
            said = stoppedAfter(peers, looks);
        }
        assertThat(said.get("objective").asDouble()).isCloseTo(optimum, within(5e-11));
        assertThat(withABlend).isGreaterThan(3);
    }

    private static ObjectNode stoppedAfter(ObjectNode problem, int looks) {
        AtomicLong clock = new AtomicLong();
        BlendStatus status = new BlendStatus();
        ObjectNode said =
                BlendWriter.write(BlendReader.read(problem, looks / 1e3), status, () -> clock.addAndGet(1_000_000));
        assertThat(status.exit()).isEqualTo(said.get("status").asText().equals("stopped") ? 5 : 0);
        return said;
    }
}
