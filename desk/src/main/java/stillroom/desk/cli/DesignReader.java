package stillroom.desk.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.trials.ConstraintReader;
import stillroom.science.design.Criterion;
import stillroom.science.design.DesignTask;
import stillroom.science.design.Run;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.LinearConstraint;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;

/** Reads a question for a design from JSON. What cannot be read is refused with a sentence that names it. */
final class DesignReader {
    private static final int MOST_COMPONENTS = 16;

    private static final Set<String> FIELDS = Set.of(
            "id",
            "q",
            "n",
            "runs",
            "lower",
            "upper",
            "constraints",
            "model",
            "criterion",
            "seed",
            "replicates",
            "repeats",
            "blocks",
            "process",
            "processModel",
            "existing",
            "design",
            "steps",
            "effort",
            "seconds");

    /** @throws IllegalArgumentException where something is missing, unknown or out of bounds */
    DesignProblem read(JsonNode asked) {
        int q = components(asked);
        List<LinearConstraint> constraints = new ArrayList<>();
        asked.path("constraints").forEach(one -> constraints.add(new ConstraintReader(q).read(one)));
        MixtureRegion region =
                new MixtureRegion(bounds(asked, "lower", q, 0.0), bounds(asked, "upper", q, 1.0), constraints);
        List<DesignProblem.Process> processes = processes(asked.path("process"));
        MixtureModel model =
                MixtureModel.of(q, blending(asked), processes.size(), processTerms(asked.path("processModel")));
        DesignTask.Wishes wishes = new DesignTask.Wishes(
                criterion(asked.path("criterion").asText("D")),
                whole(asked, "blocks", 1),
                whole(asked, asked.has("repeats") ? "repeats" : "replicates", 0),
                made(asked.path("existing"), q, processes),
                seed(asked));
        int runs = whole(asked, asked.has("n") ? "n" : "runs", 2 * model.terms().size());
        return new DesignProblem(
                new DesignTask(region, model, runs, wishes),
                asked.path("design").asText("optimal"),
                whole(asked, "steps", 2),
                effort(asked),
                seconds(asked),
                processes);
    }

    /** Fields that mean nothing here: a slip of the pen in "lower" would else go unnoticed. */
    static List<String> strangers(JsonNode asked) {
        List<String> strangers = new ArrayList<>();
        asked.fieldNames().forEachRemaining(name -> {
            if (!FIELDS.contains(name)) {
                strangers.add(name);
            }
        });
        return strangers;
    }

    private static long seed(JsonNode asked) {
        if (!asked.hasNonNull("seed")) {
            return 1;
        }
        if (!asked.get("seed").canConvertToExactIntegral() || !asked.get("seed").canConvertToLong()) {
            throw new IllegalArgumentException("\"seed\" is a whole number, not " + asked.get("seed"));
        }
        return asked.get("seed").asLong();
    }

    private static int components(JsonNode asked) {
        if (!asked.isObject()) {
            throw new IllegalArgumentException("a problem is an object with \"q\", \"n\", \"lower\" and \"upper\"");
        }
        int q = whole(asked, "q", asked.path("lower").size());
        if (q < 2 || q > MOST_COMPONENTS) {
            throw new IllegalArgumentException("\"q\" is the number of components, 2 to " + MOST_COMPONENTS);
        }
        return q;
    }

    private static List<Double> bounds(JsonNode asked, String name, int q, double usual) {
        if (!asked.hasNonNull(name)) {
            return Collections.nCopies(q, usual);
        }
        List<Double> bounds = new ArrayList<>();
        for (JsonNode bound : asked.get(name)) {
            if (!bound.isNumber()) {
                throw new IllegalArgumentException("\"" + name + "\" is a list of fractions between 0 and 1");
            }
            bounds.add(bound.asDouble());
        }
        if (bounds.size() != q) {
            throw new IllegalArgumentException(
                    "\"" + name + "\" has " + bounds.size() + " entries for " + q + " components");
        }
        return bounds;
    }

    private static int whole(JsonNode asked, String name, int usual) {
        if (!asked.hasNonNull(name)) {
            return usual;
        }
        if (!asked.get(name).canConvertToExactIntegral()
                || Math.abs(asked.get(name).asDouble()) > 10_000) {
            throw new IllegalArgumentException("\"" + name + "\" is a whole number, not " + asked.get(name));
        }
        return asked.get(name).asInt();
    }

    private static Optional<Double> seconds(JsonNode asked) {
        if (!asked.hasNonNull("seconds")) {
            return Optional.empty();
        }
        double seconds = asked.get("seconds").asDouble(0);
        if (!(seconds > 0 && seconds <= 3600)) {
            throw new IllegalArgumentException("\"seconds\" is a time limit above 0 and up to 3600");
        }
        return Optional.of(seconds);
    }

    private static double effort(JsonNode asked) {
        double effort = asked.path("effort").asDouble(asked.has("effort") ? 0 : 1);
        if (!(effort > 0 && effort <= 1000)) {
            throw new IllegalArgumentException("\"effort\" is in times the usual, above 0 and up to 1000");
        }
        return effort;
    }

    private static String word(JsonNode text) {
        return text.asText("").toLowerCase(Locale.ROOT).replaceAll("[ _]", "-");
    }

    private static Blending blending(JsonNode asked) {
        return switch (word(asked.path("model"))) {
            case "linear" -> Blending.LINEAR;
            case "", "quadratic" -> Blending.QUADRATIC;
            case "special-cubic", "cubic-special" -> Blending.SPECIAL_CUBIC;
            default -> throw new IllegalArgumentException("\"model\" is linear, quadratic or special-cubic");
        };
    }

    private static ProcessTerms processTerms(JsonNode asked) {
        return switch (word(asked)) {
            case "", "linear" -> ProcessTerms.LINEAR;
            case "quadratic" -> ProcessTerms.QUADRATIC;
            case "crossed" -> ProcessTerms.CROSSED;
            default -> throw new IllegalArgumentException("\"processModel\" is linear, quadratic or crossed");
        };
    }

    private static Criterion criterion(String word) {
        return switch (word.toUpperCase(Locale.ROOT)) {
            case "D" -> Criterion.D;
            case "I", "V" -> Criterion.I;
            default -> throw new IllegalArgumentException("\"criterion\" is D or I");
        };
    }

    private static List<DesignProblem.Process> processes(JsonNode asked) {
        List<DesignProblem.Process> processes = new ArrayList<>();
        if (asked.isNumber()) {
            for (int k = 0; k < Math.min(6, asked.asInt()); k++) {
                processes.add(new DesignProblem.Process("w" + (k + 1), -1, 1));
            }
            return processes;
        }
        for (JsonNode one : asked) {
            String name = one.isTextual() ? one.asText() : one.path("name").asText("w" + (processes.size() + 1));
            double low = one.path("low").asDouble(-1);
            double high = one.path("high").asDouble(1);
            if (!(low < high)) {
                throw new IllegalArgumentException("process variable \"" + name + "\" needs \"low\" below \"high\"");
            }
            processes.add(new DesignProblem.Process(name, low, high));
        }
        return processes;
    }

    /** Runs already made: fractions, then process variables as they were set; or an object with both. */
    private static List<Run> made(JsonNode asked, int q, List<DesignProblem.Process> processes) {
        List<Run> runs = new ArrayList<>();
        for (JsonNode one : asked) {
            List<Double> figures = new ArrayList<>();
            if (one.isArray()) {
                one.forEach(figure -> figures.add(figure.asDouble(Double.NaN)));
            } else {
                one.path("fractions").forEach(figure -> figures.add(figure.asDouble(Double.NaN)));
                one.path("process").forEach(figure -> figures.add(figure.asDouble(Double.NaN)));
            }
            if (figures.size() != q + processes.size() || figures.contains(Double.NaN)) {
                throw new IllegalArgumentException("run " + (runs.size() + 1) + " of \"existing\" needs " + q
                        + " fractions and " + processes.size() + " process variables");
            }
            List<Double> coded = new ArrayList<>();
            for (int k = 0; k < processes.size(); k++) {
                coded.add(processes.get(k).coded(figures.get(q + k)));
            }
            runs.add(new Run(figures.subList(0, q), coded, 1));
        }
        return runs;
    }
}
