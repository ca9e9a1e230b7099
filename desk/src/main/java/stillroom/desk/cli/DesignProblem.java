package stillroom.desk.cli;

import java.util.List;
import java.util.Optional;
import stillroom.science.design.DesignTask;

/**
 * A problem as it was asked.
 *
 * @param kind optimal, lattice or centroid
 * @param steps of a lattice
 * @param effort counted work, in times the usual
 * @param seconds after which the search stops, where a time was asked for; the answer may then depend on the machine
 * @param processes of the process variables, in the order of the model
 */
record DesignProblem(
        DesignTask task, String kind, int steps, double effort, Optional<Double> seconds, List<Process> processes) {
    DesignProblem {
        processes = List.copyOf(processes);
    }

    /**
     * @param low actual value of the coded -1
     * @param high actual value of the coded 1
     */
    record Process(String name, double low, double high) {
        double actual(double coded) {
            return (low + high) / 2 + coded * (high - low) / 2;
        }

        double coded(double actual) {
            return (2 * actual - low - high) / (high - low);
        }
    }
}
