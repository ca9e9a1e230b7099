package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;

/** Carries doubts about where a phase begins to the lines below. Not thread-safe. */
final class PhaseDoubts {
    private final boolean hasColumn;
    private final boolean hasPhases;
    private Optional<Flag> doubt = Optional.empty();

    PhaseDoubts(Table table, List<Row> segment) {
        int last = segment.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .mapToInt(Row::place)
                .max()
                .orElse(-1);
        this.hasPhases = segment.stream()
                .filter(row -> row.place() <= last)
                .anyMatch(row -> row.kind() == RowKind.PHASE
                        || row.kind() == RowKind.LINE && !row.phase().isEmpty());
        this.hasColumn = table.column(Meaning.PHASE).isPresent();
    }

    /** To be told of each row in turn. */
    void pass(Row row) {
        if (row.kind() == RowKind.TITLE) {
            doubt = Optional.empty();
        }
        if (row.kind() == RowKind.PHASE) {
            doubt = row.flags().stream().filter(Flag::doubtful).findFirst();
        }
    }

    /** To be told of a line that may be the name of a phase with its sum. */
    void passPerhapsPhase(Row line) {
        doubt = Optional.of(Flag.doubt(
                "\"" + (line.names().isEmpty() ? line.text() : line.names().get(0))
                        + "\" above is perhaps the name of this phase."));
    }

    /**
     * What is doubtful about the phase of a line.
     *
     * @param phase in which it is taken to be
     */
    Optional<Flag> doubt(Row line, String phase) {
        if (hasPhases && phase.isEmpty()) {
            return Optional.of(Flag.doubt("This stands in no phase, where others do."));
        }
        Optional<Flag> here = hasColumn && !line.phase().isEmpty() ? Optional.empty() : doubt;
        boolean bare = !line.hasAmount()
                && line.names().size() == 1
                && NameText.of(line.text()).equals(line.names().get(0));
        if (bare && !hasColumn) {
            doubt = Optional.of(Flag.doubt("It is not sure whether \""
                    + line.names().get(0) + "\" above is an ingredient without an amount or the name of a phase."));
        }
        return here;
    }
}
