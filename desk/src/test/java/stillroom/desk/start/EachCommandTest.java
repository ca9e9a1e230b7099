package stillroom.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command as a program of its own: exit status, JSON that can be read, standard input, one sentence where it fails. */
class EachCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path DOCS = Path.of("..", "docs");

    @TempDir
    Path folder;

    private record Ran(int status, byte[] bytes, String err) {
        String out() {
            return new String(bytes, StandardCharsets.UTF_8);
        }

        JsonNode json() throws IOException {
            assertThat(out().strip().lines()).as(out() + err).hasSize(1);
            return JSON.readTree(bytes);
        }
    }

    private static Ran run(byte[] in, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).start();
        try (OutputStream to = process.getOutputStream()) {
            to.write(in);
        } catch (IOException unread) {
            // A command that does not read its input ends before all of it is written.
        }
        byte[] out = process.getInputStream().readAllBytes();
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ran(process.exitValue(), out, err);
    }

    private static Ran run(String... arguments) throws IOException, InterruptedException {
        return run(new byte[0], arguments);
    }

    private static Ran fed(String text, String... arguments) throws IOException, InterruptedException {
        return run(text.getBytes(StandardCharsets.UTF_8), arguments);
    }

    private static String example(String name) throws IOException {
        return Files.readString(DOCS.resolve("examples").resolve(name));
    }

    private static void fits(String schema, String json) throws IOException {
        JsonSchema read = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(DOCS.resolve("schema").resolve(schema)));
        assertThat(read.validate(json, InputFormat.JSON)).isEmpty();
    }

    private String home() {
        return folder.resolve("home").toString();
    }

    @Test
    void formulasAreJudgedLabelledPlannedAndHandedOutFromStandardInput() throws Exception {
        String cream = example("hand-cream.json");
        Ran evaluated = fed(example("too-much-preservative.json"), "evaluate", "-", "--json", "--as-of", "2026-11-25");
        assertThat(evaluated.json().get("status").asText()).isEqualTo("warnings");
        assertThat(evaluated.status()).isEqualTo(4);
        assertThat(fed(cream, "label", "-", "--json")
                        .json()
                        .get("ingredientText")
                        .asText())
                .startsWith("Ingredients: Aqua, ");
        JsonNode plan = fed(cream, "plan", "-", "--json", "--batch", "500").json();
        assertThat(plan.get("lines")).isNotEmpty();
        Path out = folder.resolve("recipe.html");
        Ran recipe = fed(cream, "recipe", "-", "--json", "--out", out.toString());
        assertThat(recipe.status()).as(recipe.err()).isZero();
        assertThat(recipe.json().get("bytes").asLong()).isEqualTo(Files.size(out));
        Ran streamed = fed(cream, "recipe", "-", "--out", "-");
        assertThat(streamed.bytes()).isEqualTo(Files.readAllBytes(out));
        Ran broken = fed("{", "evaluate", "-", "--json");
        assertThat(broken.status()).isEqualTo(3);
        assertThat(broken.json().get("problems")).isNotEmpty();
    }

    @Test
    void whatIsComputedAnswersAsJsonOnALine() throws Exception {
        assertThat(fed("{\"components\":[]}\n", "equilibrium", "--json", "-")
                        .json()
                        .has("pH"))
                .isTrue();
        Ran dose = fed("{}\n", "dose", "--json", "-");
        assertThat(dose.status()).isEqualTo(3);
        assertThat(dose.json().get("error").asText()).isNotBlank();
        Ran design = fed("{\"q\":3}", "design", "--json", "-");
        assertThat(design.status()).isZero();
        assertThat(design.json().get("design")).isNotEmpty();
        Ran blend = fed("{\"materials\":[{\"name\":\"a\",\"max\":0.5}]}", "blend", "--json", "-");
        assertThat(blend.status()).isEqualTo(4);
        assertThat(blend.json().get("status").asText()).isEqualTo("infeasible");
        for (String command : List.of("equilibrium", "dose", "design", "blend")) {
            Ran missing = run(command, "--json", folder.resolve("none.json").toString());
            assertThat(missing.status()).isEqualTo(1);
            assertThat(missing.err()).contains("is not there").doesNotContain("Exception");
            assertThat(missing.json().get("error").asText()).contains("none.json");
        }
    }

    @Test
    void aWorkshopGoesOutAndComesInByEachDoor() throws Exception {
        Ran imported = fed(example("hand-cream.json"), "import", "--yes", "--json", "-", "--data", home());
        assertThat(imported.status()).as(imported.err()).isZero();
        assertThat(imported.json().get("path").asText()).isEqualTo("/products/1/versions/1");

        Ran exported = run("export", "--data", home());
        assertThat(exported.status()).isZero();
        fits("workshop-1.json", exported.out());
        Ran formula = run("export", "--formula", "hand CREAM", "-", "--data", home());
        fits("formula-1.json", formula.out());
        assertThat(formula.out()).isEqualTo(example("hand-cream.json"));
        Path formulas = folder.resolve("formulas");
        JsonNode written = run("export", "--formulas", formulas.toString(), "--json", "--data", home())
                .json();
        assertThat(written.get("written")).hasSize(1);
        assertThat(formulas.resolve("1-hand-cream.json")).hasContent(formula.out());
        assertThat(run("export", "--formulas", formulas.toString(), "--data", home())
                        .status())
                .as("written again, for version control")
                .isZero();
        Files.writeString(formulas.resolve("1-hand-cream.json"), "my own notes");
        Ran kept = run("export", "--formulas", formulas.toString(), "--data", home());
        assertThat(kept.status()).isEqualTo(1);
        assertThat(kept.err()).contains("is no formula file");
        assertThat(formulas.resolve("1-hand-cream.json")).hasContent("my own notes");

        Ran again = run(exported.bytes(), "import", "--yes", "--json", "-", "--data", home() + "-2");
        assertThat(again.json().get("stored").asBoolean()).isTrue();
        assertThat(run("export", "--data", home() + "-2").bytes()).isEqualTo(exported.bytes());
    }

    @Test
    void aCopyGoesDownAPipeAndIsPutBack() throws Exception {
        fed(example("hand-cream.json"), "import", "--yes", "-", "--data", home());
        Ran copy = run("backup", "-", "--data", home());
        assertThat(copy.status()).as(copy.err()).isZero();
        Ran restored = run(copy.bytes(), "restore", "-", "--json", "--data", home() + "-2");
        assertThat(restored.status()).as(restored.err()).isZero();
        assertThat(restored.json().get("restored").asText()).endsWith("home-2");
        assertThat(run("export", "--data", home() + "-2").bytes())
                .isEqualTo(run("export", "--data", home()).bytes());
        Ran cut = run(java.util.Arrays.copyOf(copy.bytes(), 5000), "restore", "-", "--json", "--data", home());
        assertThat(cut.status()).isEqualTo(1);
        assertThat(cut.json().get("error").asText()).endsWith(".").doesNotContain("Exception");
        JsonNode dated = run("backup", "--json", "--data", home()).json();
        assertThat(Path.of(dated.get("written").asText())).exists();
    }

    @Test
    void batchesAreVerifiedByCodesFromStandardInput() throws Exception {
        fed(example("hand-cream.json"), "import", "--yes", "-", "--data", home());
        Ran none = run("verify", "--json", "--data", home());
        assertThat(none.status()).isZero();
        assertThat(none.out()).isEmpty();
        Ran unknown = fed("241125-1\n", "verify", "-", "--json", "--data", home());
        assertThat(unknown.status()).isEqualTo(1);
        assertThat(unknown.json().get("error").asText()).isEqualTo("There is no batch 241125-1.");
        assertThat(run("verify", "--json", "--data", home() + "-3").status()).isEqualTo(1);
        assertThat(run("verify", "--colour").status()).isEqualTo(2);
    }
}
