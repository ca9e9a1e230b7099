package stillroom.desk.cli;

import java.util.List;
import stillroom.science.design.ClassicalDesigns;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.DesignTask;
import stillroom.science.design.OptimalDesigns;
import stillroom.science.design.Run;

/** A lattice or centroid design above the lower bounds of a problem; refused where an upper bound or constraint cuts it. */
final class ClassicalProblem {
    private ClassicalProblem() {}

    static DesignAnswer answer(DesignProblem problem) {
        DesignTask task = problem.task();
        List<String> wrong = task.region().problems();
        if (!wrong.isEmpty()) {
            return new DesignAnswer.Refused(wrong);
        }
        if (!problem.processes().isEmpty()) {
            throw new IllegalArgumentException("lattice and centroid designs take no process variables");
        }
        List<Run> runs = runs(problem);
        for (Run run : runs) {
            double[] fractions =
                    run.fractions().stream().mapToDouble(Double::doubleValue).toArray();
            if (!task.region().contains(fractions, 1e-9)) {
                return new DesignAnswer.Refused(List.of("Upper bounds or constraints cut off the mixture "
                        + run.fractions() + ": a lattice or centroid design does not fit, an optimal one does."));
            }
        }
        return OptimalDesigns.judge(task, runs);
    }

    private static List<Run> runs(DesignProblem problem) {
        int q = problem.task().region().components();
        List<Run> plain = switch (problem.kind()) {
            case "lattice" -> ClassicalDesigns.lattice(q, problem.steps());
            case "centroid" -> ClassicalDesigns.centroid(q);
            default -> throw new IllegalArgumentException("\"design\" is optimal, lattice or centroid");
        };
        return plain.stream()
                .map(run -> ClassicalDesigns.above(problem.task().region(), run))
                .toList();
    }
}
