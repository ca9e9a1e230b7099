package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * {@code ./stillroom blend FILE}: blending problems as JSON, one answer a line as JSON. The formats stand in
 * docs/commands.md.
 */
@Command(
        name = "blend",
        mixinStandardHelpOptions = true,
        description =
                "Finds the best blend within limits, or says why there is none: problems as JSON or CSV, answers as JSON.")
public final class BlendCommand implements Callable<Integer> {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "A file of JSON problems, or - for standard input.")
    private String file = "-";

    @Option(
            names = "--materials",
            paramLabel = "CSV",
            description = "Materials: name, cost, max, min dose, properties.")
    private @Nullable Path materials;

    @Option(names = "--limits", paramLabel = "CSV", description = "Limits: property, min, max; with --materials.")
    private @Nullable Path limits;

    @Option(names = "--at-most", paramLabel = "N", description = "Use at most N materials, each above its min dose.")
    private @Nullable Integer atMost;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "Time limit of a problem that states none. Usually 60.")
    private double seconds = 60;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        BlendStatus status = new BlendStatus();
        if (materials == null && limits == null) {
            try (InputStream in = file.equals("-") ? System.in : Files.newInputStream(Path.of(file))) {
                answerAll(in, out, status);
            }
        } else if (materials == null || limits == null) {
            throw new ParameterException(spec.commandLine(), "--materials and --limits belong together");
        } else {
            answerFiles(materials, limits, out, status);
        }
        out.flush();
        return status.exit();
    }

    private void answerFiles(Path ofMaterials, Path ofLimits, PrintWriter out, BlendStatus status) throws IOException {
        try {
            answer(BlendCsv.problem(ofMaterials, ofLimits, atMost), out, status);
        } catch (IllegalArgumentException refused) {
            refuse(JsonNodeFactory.instance.objectNode(), refused.getMessage(), out, status);
        }
    }

    /** Problems one after the other, on one line each or on several. */
    private void answerAll(InputStream in, PrintWriter out, BlendStatus status) throws IOException {
        try (MappingIterator<JsonNode> problems = JSON.readerFor(JsonNode.class).readValues(in)) {
            while (problems.hasNextValue()) {
                answer(problems.nextValue(), out, status);
            }
        } catch (JsonProcessingException broken) {
            String what = "from here on this is not JSON: " + broken.getOriginalMessage();
            refuse(JsonNodeFactory.instance.objectNode(), what, out, status);
        }
    }

    private void answer(JsonNode asked, PrintWriter out, BlendStatus status) throws IOException {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        if (asked.has("id")) {
            said.set("id", asked.get("id"));
        }
        try {
            said.setAll(BlendWriter.write(BlendReader.read(asked, seconds), status));
            out.println(JSON.writeValueAsString(said));
        } catch (IllegalArgumentException refused) {
            refuse(said, refused.getMessage(), out, status);
        }
    }

    private static void refuse(ObjectNode said, @Nullable String why, PrintWriter out, BlendStatus status)
            throws IOException {
        status.unreadable();
        said.put("error", String.valueOf(why));
        out.println(JSON.writeValueAsString(said));
    }
}
