package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;

/**
 * A part of a sheet that is read as one: columns with a meaning, and the rows below them.
 *
 * @param titles rows above the headings that belong to it
 * @param heads rows of headings in it
 * @param first first row below the headings
 * @param last last row
 * @param phase name of the phase with which it begins, may be empty
 */
record Table(
        Grid grid, List<Column> columns, List<Integer> titles, List<Integer> heads, int first, int last, String phase) {
    Table {
        columns = List.copyOf(columns);
        titles = List.copyOf(titles);
        heads = List.copyOf(heads);
    }

    Optional<Column> column(Meaning meaning) {
        return columns.stream().filter(column -> column.meaning() == meaning).findFirst();
    }

    List<Column> columns(Meaning meaning) {
        return columns.stream().filter(column -> column.meaning() == meaning).toList();
    }

    /** The columns of names, what is shown first in front. */
    List<Column> names() {
        return columns.stream()
                .filter(column -> column.meaning().names())
                .sorted(java.util.Comparator.comparing(Column::meaning))
                .toList();
    }

    String text(int row, Meaning meaning) {
        return column(meaning)
                .map(column -> grid.cell(row, column.place()).text())
                .orElse("");
    }
}
