package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The part of a sheet that may be a list of materials.
 *
 * @param heads its rows of headings
 * @param titles rows above the headings
 * @param first first row below the headings
 * @param last last row
 */
record ListTable(
        Grid grid,
        Terms terms,
        List<ListColumn> columns,
        List<Integer> heads,
        List<Integer> titles,
        int first,
        int last) {
    ListTable {
        columns = columns.stream()
                .sorted(Comparator.comparingInt(ListColumn::place))
                .toList();
        heads = List.copyOf(heads);
        titles = List.copyOf(titles);
    }

    ListTable with(List<ListColumn> others) {
        return new ListTable(grid, terms, others, heads, titles, first, last);
    }

    List<ListColumn> columns(Meaning meaning) {
        return columns.stream().filter(column -> column.meaning() == meaning).toList();
    }

    Optional<ListColumn> column(Meaning meaning) {
        return columns(meaning).stream().findFirst();
    }

    /** The columns of names, what is shown first in front. */
    List<ListColumn> names() {
        return columns.stream()
                .filter(column -> column.meaning().names())
                .sorted(Comparator.comparing(ListColumn::meaning))
                .toList();
    }

    Cell cell(int row, ListColumn column) {
        return grid.cell(row, column.place());
    }

    String text(int row, Meaning meaning) {
        return columns(meaning).stream()
                .map(column -> cell(row, column).text())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** The cells below the headings. */
    IntStream rows() {
        return IntStream.rangeClosed(first, last).filter(row -> !heads.contains(row));
    }

    List<Cell> cells(ListColumn column) {
        return rows().mapToObj(row -> cell(row, column))
                .filter(cell -> !cell.isBlank())
                .toList();
    }

    /** How large a part of the filled cells of a column is so; 0 for an empty column. */
    double part(ListColumn column, Predicate<Cell> so) {
        List<Cell> cells = cells(column);
        return cells.isEmpty() ? 0 : (double) cells.stream().filter(so).count() / cells.size();
    }

    Stream<Cell> filled(int row) {
        return grid.rows().get(row).stream().filter(cell -> !cell.isBlank());
    }

    /** What stands outside of its columns of figures: titles, and rows of one text. */
    List<String> said() {
        List<String> said = new ArrayList<>();
        said.add(grid.name());
        titles.forEach(row -> filled(row).map(Cell::text).forEach(said::add));
        rows().filter(row -> filled(row).count() == 1)
                .forEach(row -> filled(row).map(Cell::text).forEach(said::add));
        return said;
    }

    String firstName(int row) {
        return names().stream()
                .map(column -> cell(row, column).text())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }
}
