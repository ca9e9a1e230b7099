package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.OptimalDesigns;

/**
 * {@code ./stillroom design FILE}: problems of mixture design as JSON, answered as JSON. The formats stand in
 * docs/commands.md.
 */
@Command(
        name = "design",
        mixinStandardHelpOptions = true,
        description = "Chooses which mixtures to try: a problem as JSON, or several, answered as JSON.")
public final class DesignCommand implements Callable<Integer> {
    /** Only against a search that would never end; the usual effort is done in less than a second. */
    private static final double EMERGENCY_SECONDS = 60;

    private static final double USUAL_SECONDS = 0.6;

    private static final ObjectMapper JSON = new ObjectMapper();

    @Parameters(paramLabel = "FILE", description = "A file, or - for standard input.")
    private String file = "-";

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    private boolean allAnswered = true;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        try (InputStream in = file.equals("-") ? System.in : Files.newInputStream(Path.of(file));
                MappingIterator<JsonNode> problems =
                        JSON.readerFor(JsonNode.class).readValues(in)) {
            while (problems.hasNextValue()) {
                out.println(JSON.writeValueAsString(answer(problems.nextValue())));
                out.flush();
            }
        } catch (JsonProcessingException broken) {
            out.println(JSON.writeValueAsString(refused(List.of("This is not JSON: " + broken.getOriginalMessage()))));
        }
        out.flush();
        return allAnswered ? 0 : JsonLines.SOME_UNREADABLE;
    }

    /** One problem, a list of them, or several by name. */
    private JsonNode answer(JsonNode asked) {
        if (asked.isArray()) {
            ArrayNode answers = JSON.createArrayNode();
            asked.forEach(one -> answers.add(answer(one)));
            return answers;
        }
        boolean named = asked.isObject() && !asked.isEmpty() && !asked.has("q") && !asked.has("lower");
        if (named
                && JSON.convertValue(asked, java.util.Map.class).values().stream()
                        .allMatch(java.util.Map.class::isInstance)) {
            ObjectNode answers = JSON.createObjectNode();
            asked.fields().forEachRemaining(entry -> answers.set(entry.getKey(), answer(entry.getValue())));
            return answers;
        }
        return one(asked);
    }

    private ObjectNode one(JsonNode asked) {
        ObjectNode said = JSON.createObjectNode();
        if (asked.has("id")) {
            said.set("id", asked.get("id"));
        }
        try {
            return said.setAll(solved(new DesignReader().read(asked)));
        } catch (IllegalArgumentException wrong) {
            return said.setAll(refused(List.of(String.valueOf(wrong.getMessage()))));
        }
    }

    private ObjectNode solved(DesignProblem problem) {
        long begun = System.nanoTime();
        double times = problem.effort() * problem.seconds().orElse(USUAL_SECONDS) / USUAL_SECONDS;
        double stop = problem.seconds().orElse(EMERGENCY_SECONDS * Math.max(1, times));
        DesignAnswer answer = problem.kind().equals("optimal")
                ? OptimalDesigns.search(
                        problem.task(),
                        (long) (OptimalDesigns.USUAL_EFFORT * times),
                        () -> System.nanoTime() - begun > stop * 1e9)
                : ClassicalProblem.answer(problem);
        return answer.match(
                found -> DesignWriter.write(problem, found.design(), (System.nanoTime() - begun) / 1e9),
                refused -> refused(refused.reasons()));
    }

    private ObjectNode refused(List<String> reasons) {
        allAnswered = false;
        reasons.forEach(spec.commandLine().getErr()::println);
        ObjectNode said = JSON.createObjectNode();
        said.put("error", String.join(" ", reasons));
        ArrayNode all = said.putArray("errors");
        reasons.forEach(all::add);
        return said;
    }
}
