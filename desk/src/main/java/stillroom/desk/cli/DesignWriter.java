package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import stillroom.science.design.DesignTask;
import stillroom.science.design.MixtureDesign;
import stillroom.science.design.Run;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.Term;

/** Writes a design as JSON. */
final class DesignWriter {
    private DesignWriter() {}

    static ObjectNode write(DesignProblem problem, MixtureDesign design, double seconds) {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        answer.put("D", design.d());
        design.dCeiling().ifPresent(ceiling -> {
            answer.put("DBound", ceiling);
            answer.put("efficiency", design.d() / ceiling);
        });
        answer.put("meanPredictionVariance", design.meanVariance());
        answer.put("meanPredictionVarianceIs", design.momentsExact() ? "exact" : "sampled");
        design.meanVarianceFloor().ifPresent(floor -> {
            answer.put("IBound", floor);
            answer.put("IEfficiency", floor / design.meanVariance());
        });
        if (problem.task().wishes().blocks() > 1) {
            answer.put("blockEfficiency", design.blockEfficiency());
        }
        answer.put("n", design.runs().size());
        answer.put("p", problem.task().model().terms().size());
        answer.put("repeatedRuns", design.repeats());
        answer.put("seconds", seconds);
        ArrayNode fractions = answer.putArray("design");
        design.runs().forEach(run -> numbers(fractions.addArray(), run.fractions()));
        runs(answer, problem, design.runs());
        settings(answer.putObject("settings"), problem, design.effort());
        return answer;
    }

    private static void numbers(ArrayNode into, List<Double> figures) {
        figures.forEach(into::add);
    }

    private static void runs(ObjectNode answer, DesignProblem problem, List<Run> runs) {
        List<Integer> order = order(problem.task(), runs);
        ArrayNode list = answer.putArray("runs");
        int made = problem.task().wishes().made().size();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            ObjectNode one = list.addObject();
            one.put("run", i + 1);
            one.put("order", order.get(i));
            one.put("block", run.block());
            if (i < made) {
                one.put("alreadyMade", true);
            }
            numbers(one.putArray("fractions"), run.fractions());
            if (!run.process().isEmpty()) {
                ObjectNode process = one.putObject("process");
                for (int k = 0; k < run.process().size(); k++) {
                    DesignProblem.Process variable = problem.processes().get(k);
                    process.put(variable.name(), variable.actual(run.process().get(k)));
                }
            }
        }
    }

    /** In which order to make them: those already made first, then shuffled within each block. */
    private static List<Integer> order(DesignTask task, List<Run> runs) {
        SplittableRandom random = new SplittableRandom(task.wishes().seed() + 1);
        Integer[] order = new Integer[runs.size()];
        int made = task.wishes().made().size();
        for (int i = 0; i < order.length; i++) {
            order[i] = i + 1;
            for (int k = i;
                    i >= made
                            && k > made
                            && runs.get(k - 1).block() == runs.get(i).block();
                    k--) {
                if (random.nextInt(i - k + 2) == 0) {
                    Integer swap = order[i];
                    order[i] = order[k - 1];
                    order[k - 1] = swap;
                    break;
                }
            }
        }
        return new ArrayList<>(List.of(order));
    }

    private static void settings(ObjectNode into, DesignProblem problem, MixtureDesign.Effort effort) {
        DesignTask task = problem.task();
        MixtureModel model = task.model();
        into.put("criterion", task.wishes().criterion().name());
        ArrayNode terms = into.putArray("terms");
        model.terms().stream().map(Term::name).forEach(terms::add);
        into.put("seed", task.wishes().seed());
        into.put("blocks", task.wishes().blocks());
        into.put("effort", problem.effort());
        problem.seconds().ifPresent(seconds -> into.put("secondsAllowed", seconds));
        into.put("candidates", effort.candidates());
        into.put("starts", effort.starts());
        into.put("multiplications", effort.multiplications());
        into.put("stoppedByLimit", effort.stopped());
    }
}
