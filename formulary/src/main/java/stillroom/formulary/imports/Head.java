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

    /** One phase alone is none: "oil" above names is their heading. */
    Head ofNames() {
        return new Head(row, height, columns, "");
    }

    /** Whether two heads announce the same columns in the same places. */
    boolean isLike(Head other) {
        return announced().equals(other.announced());
    }

    /** What is announced where; words of their own in front of the amounts may be a phase, an ingredient, a name. */
    private java.util.List<String> announced() {
        return columns.stream()
                .filter(column -> column.meaning() != Meaning.LEFT_OUT || column == columns.get(0))
                .map(column -> column.place() + " "
                        + (column == columns.get(0) && column.guessed() ? Meaning.NAME : column.meaning()))
                .toList();
    }
}
