package stillroom.desk.cli;

import java.util.List;
import stillroom.science.blend.Blend;

/**
 * A blending problem as it was read.
 *
 * @param costs per unit of mass of each material, for the sum that is shown beside the objective
 * @param notes what was understood in a way that one might not expect
 */
record BlendTask(Blend blend, List<Double> costs, double seconds, List<String> notes) {
    BlendTask {
        costs = List.copyOf(costs);
        notes = List.copyOf(notes);
    }
}
