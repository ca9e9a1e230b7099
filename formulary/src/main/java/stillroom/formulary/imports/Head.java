package stillroom.formulary.imports;

import java.util.List;

/**
 * A row of headings, or the part of one that heads a table of its own.
 *
 * @param height 2 where the headings go over two rows
 * @param phase name of the phase where the headings begin with it, as in "Phase A | % | g"
 */
record Head(int row, int height, List<Column> columns, String phase) {
    Head {
        columns = List.copyOf(columns);
    }

    int left() {
        return columns.stream().mapToInt(Column::place).min().orElse(0);
    }

    int right() {
        return columns.stream().mapToInt(Column::place).max().orElse(0);
    }

    /** Whether two heads announce the same columns in the same places. */
    boolean isLike(Head other) {
        return columns.stream()
                .map(column -> column.place() + " " + column.meaning())
                .toList()
                .equals(other.columns.stream()
                        .map(column -> column.place() + " " + column.meaning())
                        .toList());
    }
}
