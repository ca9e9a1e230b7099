package stillroom.formulary.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A product as percentages in phases, in the order in which they are worked. */
public record Formula(List<Phase> phases) {
    public static final Formula EMPTY = new Formula(List.of());

    public Formula {
        phases = List.copyOf(phases);
    }

    /** All lines in order of phases. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        phases.forEach(phase -> lines.addAll(phase.lines()));
        return List.copyOf(lines);
    }

    public Optional<Line> line(String id) {
        return lines().stream().filter(line -> line.id().equals(id)).findFirst();
    }

    public Optional<Phase> phase(String id) {
        return phases.stream().filter(phase -> phase.id().equals(id)).findFirst();
    }
}
