package stillroom.formulary.formula;

import java.util.List;

/** Lines that go into one vessel together, and the steps in which that is done. */
public record Phase(String id, String name, List<Line> lines, List<Step> steps) {
    public Phase {
        lines = List.copyOf(lines);
        steps = List.copyOf(steps);
    }
}
