package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.science.equilibrium.Equilibrium;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.WaterModel;

class CommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path DOCUMENT = Path.of("..", "docs", "commands.md");

    @TempDir
    Path folder;

    private record Ran(int status, List<JsonNode> answers) {}

    private Ran run(Object command, String... lines) throws IOException {
        Path file = Files.write(folder.resolve("in.jsonl"), List.of(lines));
        StringWriter out = new StringWriter();
        int status = new CommandLine(command).setOut(new PrintWriter(out)).execute(file.toString());
        List<JsonNode> answers = new ArrayList<>();
        for (String line : out.toString().split("\\R")) {
            if (!line.isBlank()) {
                answers.add(JSON.readTree(line));
            }
        }
        return new Ran(status, answers);
    }

    /** The examples of the document, each on one line as the commands want them. */
    private static String example(int number) throws IOException {
        String document = Files.readString(DOCUMENT);
        String[] blocks = document.split("```json\n");
        return blocks[number].split("```")[0].replace("\n", " ");
    }

    @Test
    void equilibriumAnswersAreTheSolversToTheLastDigit() throws IOException {
        Ran ran = run(
                new EquilibriumCommand(),
                example(1),
                "",
                "{\"id\":2,\"components\":[{\"name\":\"phosphoric-acid\",\"molPerKg\":0.025},{\"name\":\"sodium-hydroxide\",\"molPerKg\":0.05}],\"celsius\":40}");
        assertThat(ran.status()).isZero();
        AcidConstants acids = AcidConstantsFile.shipped();
        Solution first = Solution.water(25)
                .with(acids.find("citric-acid").orElseThrow().system(), 0.05)
                .withIon("sodium-hydroxide", 1, 0.04)
                .withIon("chloride", -1, 0.01)
                .with(
                        new stillroom.science.equilibrium.AcidBase(
                                "my acid", 0, List.of(new stillroom.science.equilibrium.Dissociation(4.76, -0.4, 0))),
                        0.02);
        Solution second = Solution.water(40)
                .with(acids.find("phosphoric-acid").orElseThrow().system(), 0.025)
                .withIon("sodium-hydroxide", 1, 0.05);
        same(ran.answers().get(0), first);
        same(ran.answers().get(1), second);
        assertThat(ran.answers().get(0).get("id").asText()).isEqualTo("any");
        assertThat(ran.answers().get(1).get("id").asInt()).isEqualTo(2);
    }

    private static void same(JsonNode answer, Solution solution) {
        Equilibrium solved = new EquilibriumSolver(WaterModel.STANDARD).solve(solution);
        assertThat(answer.get("pH").asDouble()).isEqualTo(solved.pH());
        assertThat(answer.get("ionicStrengthMolPerKg").asDouble()).isEqualTo(solved.ionicStrengthMolPerKg());
        assertThat(answer.get("bufferCapacityMolPerKg").asDouble()).isEqualTo(solved.bufferCapacityMolPerKg());
        assertThat(answer.get("species")).hasSize(solved.species().size());
        assertThat(answer.at("/validity/inRange").asBoolean()).isTrue();
    }

    @Test
    void linesThatCannotBeReadAreAnsweredAndTheRestGoesOn() throws IOException {
        Ran ran = run(
                new EquilibriumCommand(),
                "not json",
                "[1]",
                "{\"id\":7,\"components\":[{\"name\":\"unheard-of\",\"molPerKg\":1}]}",
                "{\"components\":[{\"name\":\"citric-acid\",\"molPerKg\":-1}]}",
                "{\"components\":[{\"name\":\"citric-acid\",\"molPerKg\":1e999}]}",
                "{\"components\":[]}");
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.answers()).hasSize(6);
        for (JsonNode refused : ran.answers().subList(0, 5)) {
            assertThat(refused.get("error").asText()).isNotBlank();
        }
        assertThat(ran.answers().get(2).get("id").asInt()).isEqualTo(7);
        assertThat(ran.answers().get(2).get("error").asText()).contains("unheard-of");
        assertThat(ran.answers().get(5).get("pH").asDouble()).isEqualTo(7.0, within(0.01));
    }

    /** The document's own example: 0.5 % benzoate needs 0.82 to 0.9 g of citric acid 50 % for 950 g to pH 5. */
    @Test
    void theDoseOfTheDocumentsExample() throws IOException {
        JsonNode answer = run(new DoseCommand(), example(2)).answers().get(0);
        assertThat(answer.get("answer").asText()).isEqualTo("pour");
        assertThat(answer.get("stage").asText()).isEqualTo("first-part");
        assertThat(answer.get("gramsToTarget").asDouble()).isEqualTo(0.86, within(0.05));
        assertThat(answer.get("grams").asDouble())
                .isEqualTo(0.7 * answer.get("gramsToTargetLow").asDouble(), within(0.011));
        assertThat(answer.get("curve")).hasSize(21);
        assertThat(answer.get("cautions")).hasSize(3);
    }

    @Test
    void withOneReadingTheDoseCommandPrescribes() throws IOException {
        String one = example(2)
                .replaceAll(
                        "\\{\"vessel\": \"sample\", \"grams\": 50, \"additions\": \\{\"thin.*?\\},? *(?=\\{|\\])", "");
        one = one.replaceAll(",\\s*\\]\\}\\s*$", "]}");
        Ran ran = run(new DoseCommand(), one);
        assertThat(ran.status()).isZero();
        JsonNode answer = ran.answers().get(0);
        assertThat(answer.at("/reasons/0/kind").asText()).isEqualTo("too-few-readings");
        assertThat(answer.at("/prescription/sampleGrams").asDouble()).isEqualTo(50);
    }

    @Test
    void badTitrationsAreExplainedNotFitted() throws IOException {
        String good = example(2);
        Ran ran = run(
                new DoseCommand(),
                good.replace("\"pH\": 5.60", "\"pH\": 15"),
                good.replace("{\"thin\": 0.5}", "{\"thin\": 0.2}"),
                good.replace("\"bulkGrams\": 950", "\"bulkGrams\": 20"),
                good.replace("\"pH\": 5.23", "\"pH\": 6.5"),
                good.replace("[{\"name\": \"citric-acid\", \"molPerKg\": 2.6025}]", "[]"));
        assertThat(ran.status()).isZero();
        assertThat(ran.answers().stream()
                        .map(answer -> answer.at("/reasons/0/kind").asText()))
                .containsExactly(
                        "impossible-ph", "identical-additions", "sample-exceeds-bulk", "wrong-way", "no-strength");
        Ran unreadable = run(
                new DoseCommand(),
                good.replace("\"pour\": \"acid\"", "\"pour\": \"lye\""),
                "{",
                good.replace("\"sample\", \"grams\": 50", "\"cup\", \"grams\": 50"));
        assertThat(unreadable.status()).isEqualTo(3);
        assertThat(unreadable.answers().get(0).get("error").asText()).contains("lye");
        assertThat(unreadable.answers()).allMatch(answer -> answer.has("error"));
    }
}
