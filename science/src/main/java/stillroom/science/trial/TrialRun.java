package stillroom.science.trial;

import java.util.List;
import java.util.Optional;
import stillroom.science.design.Run;

/**
 * A mixture as it was really weighed, and what was measured of it.
 *
 * @param fractions one per component, adding up to 1
 * @param process coded process variables, -1 to 1
 * @param response empty where nothing was measured
 * @param block day or lot, from 1
 */
public record TrialRun(List<Double> fractions, List<Double> process, Optional<Double> response, int block) {
    public TrialRun {
        fractions = List.copyOf(fractions);
        process = List.copyOf(process);
    }

    /** Fractions, then process variables. */
    public double[] point() {
        return new Run(fractions, process, block).point();
    }
}
