package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A formula as it was read out of a sheet.
 *
 * @param title empty where the sheet names none
 * @param unit in what its amounts are given
 * @param notes what stands around it: facts, remarks, how it is made
 * @param flags about the whole of it
 */
public record ReadFormula(
        String title, Optional<Unit> unit, List<ReadLine> lines, List<String> notes, List<Flag> flags) {
    public ReadFormula {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
        flags = List.copyOf(flags);
    }

    /** Whether the maker should look at it before it is stored. */
    public boolean isDoubtful() {
        return doubts().findAny().isPresent() || lines.stream().anyMatch(ReadLine::isDoubtful);
    }

    public Stream<Flag> doubts() {
        return flags.stream().filter(Flag::doubtful);
    }

    /** Names of its phases in the order in which they come. */
    public List<String> phases() {
        return lines.stream().map(ReadLine::phase).distinct().toList();
    }
}
