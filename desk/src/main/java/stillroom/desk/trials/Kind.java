package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import stillroom.science.design.ClassicalDesigns;
import stillroom.science.design.Criterion;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.DesignTask;
import stillroom.science.design.OptimalDesigns;
import stillroom.science.design.Run;

/** How the runs of a set are chosen. */
enum Kind {
    I("optimal: good predictions over the whole region"),
    D("optimal: sharp coefficients, which line does what"),
    LATTICE("simplex lattice above the least amounts"),
    CENTROID("simplex centroid above the least amounts");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    boolean classical() {
        return this == LATTICE || this == CENTROID;
    }

    /** What an optimal search makes good; further runs of a classical design serve the predictions. */
    Criterion criterion() {
        return this == D ? Criterion.D : Criterion.I;
    }

    /** The runs of a classical design, its middle repeated; refused where a bound or limit cuts one of its points. */
    DesignAnswer classical(DesignTask task, int steps) {
        int q = task.region().components();
        List<Run> runs = new ArrayList<>();
        for (Run run : this == LATTICE ? ClassicalDesigns.lattice(q, steps) : ClassicalDesigns.centroid(q)) {
            runs.add(ClassicalDesigns.above(task.region(), run));
        }
        long cut = runs.stream()
                .filter(run -> !task.region().contains(run.point(), 1e-9))
                .count();
        if (cut > 0) {
            return new DesignAnswer.Refused(List.of(cut + " of the " + runs.size()
                    + " mixtures of this design lie outside the bounds and limits, so it does not fit. An optimal design does;"
                    + " or let each line go up to what the others' least amounts leave."));
        }
        Run middle = ClassicalDesigns.above(
                task.region(), ClassicalDesigns.centroid(q).get((1 << q) - 2));
        for (int k = 0; k < task.wishes().repeats(); k++) {
            runs.add(middle);
        }
        return OptimalDesigns.judge(task, runs);
    }
}
