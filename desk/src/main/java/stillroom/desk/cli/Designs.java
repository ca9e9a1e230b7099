package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.OptimalDesigns;

/** Answers questions for designs, one answer a line. */
final class Designs implements Answering {
    /** Only against a search that would never end; the usual effort is done in less than a second. */
    private static final double EMERGENCY_SECONDS = 60;

    private static final double USUAL_SECONDS = 0.6;

    private boolean allAnswered = true;
    private final List<String> complaints = new ArrayList<>();

    @Override
    public int answer(InputStream problems, PrintWriter out, PrintWriter err) throws IOException {
        try (Json.Values values = new Json.Values(problems)) {
            Optional<JsonNode> one = values.nextWhole();
            if (one.isEmpty()) {
                say(refused(List.of("Nothing was asked: a problem as JSON is wanted.")), out, err);
            }
            for (; one.isPresent(); one = values.nextWhole()) {
                say(answer(one.get()), out, err);
            }
        } catch (JsonProcessingException broken) {
            say(refused(List.of("This is not JSON: " + broken.getOriginalMessage())), out, err);
        }
        return allAnswered ? 0 : JsonLines.SOME_UNREADABLE;
    }

    private void say(JsonNode answer, PrintWriter out, PrintWriter err) throws IOException {
        complaints.forEach(err::println);
        complaints.clear();
        err.flush();
        out.println(Json.write(answer));
        out.flush();
    }

    /** One problem, a list of them, or several by name. */
    private JsonNode answer(JsonNode asked) {
        if (asked.isArray()) {
            ArrayNode answers = JsonNodeFactory.instance.arrayNode();
            asked.forEach(one -> answers.add(answer(one)));
            return answers;
        }
        boolean named = asked.isObject() && !asked.isEmpty() && !asked.has("q") && !asked.has("lower");
        if (named && allObjects(asked)) {
            ObjectNode answers = JsonNodeFactory.instance.objectNode();
            asked.fields().forEachRemaining(entry -> answers.set(entry.getKey(), answer(entry.getValue())));
            return answers;
        }
        return one(asked);
    }

    private static boolean allObjects(JsonNode asked) {
        for (JsonNode part : asked) {
            if (!part.isObject()) {
                return false;
            }
        }
        return true;
    }

    private ObjectNode one(JsonNode asked) {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        if (asked.has("id")) {
            said.set("id", asked.get("id"));
        }
        try {
            said.setAll(solved(new DesignReader().read(asked)));
            List<String> strangers = DesignReader.strangers(asked);
            if (!strangers.isEmpty()) {
                said.putArray("notes").add("Not understood, and left aside: " + String.join(", ", strangers) + ".");
            }
            return said;
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
        complaints.addAll(reasons);
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("error", String.join(" ", reasons));
        ArrayNode all = said.putArray("errors");
        reasons.forEach(all::add);
        return said;
    }
}
