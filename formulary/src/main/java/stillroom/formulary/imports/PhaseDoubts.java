package stillroom.formulary.imports;

import java.util.Optional;

/** Carries doubts about where a phase begins to the lines below. Not thread-safe. */
final class PhaseDoubts {
    private final boolean hasColumn;
    private Optional<Flag> doubt = Optional.empty();

    PhaseDoubts(Table table) {
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

    /** What is doubtful about the phase of a line. */
    Optional<Flag> doubt(Row line) {
        Optional<Flag> here = hasColumn && !line.phase().isEmpty() ? Optional.empty() : doubt;
        boolean bare = !line.hasAmount()
                && line.names().size() == 1
                && line.text().equals(line.names().get(0));
        if (bare && !hasColumn) {
            doubt = Optional.of(Flag.doubt("It is not sure whether \""
                    + line.names().get(0) + "\" above is an ingredient without an amount or the name of a phase."));
        }
        return here;
    }
}
