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

    /** Whether it lists materials of the shelf and is no formula. */
    boolean isShelfList(Terms terms) {
        boolean shelf = columns.stream().anyMatch(column -> column.meaning().isOfTheShelf());
        boolean shares = columns(Meaning.AMOUNT).stream()
                .anyMatch(column -> column.unit().map(Unit::isShare).orElse(false));
        boolean lots = columns.stream()
                .anyMatch(column -> column.meaning() == Meaning.LOT
                        || column.meaning() == Meaning.EXPIRY
                        || column.meaning() == Meaning.STOCK
                        || column.meaning() == Meaning.RECEIVED);
        boolean phases = column(Meaning.PHASE).isPresent();
        boolean priced =
                column(Meaning.PRICE).isPresent() && columns(Meaning.AMOUNT).size() <= 1;
        Body body = Body.of(this, terms);
        boolean noAmounts = columns(Meaning.AMOUNT).isEmpty();
        boolean record = column(Meaning.LOT).isPresent()
                && !noAmounts
                && columns.stream()
                        .noneMatch(column -> column.meaning().isOfTheShelf() && column.meaning() != Meaning.LOT);
        boolean summed = !noAmounts && column(Meaning.STOCK).isEmpty() && hasTotal();
        boolean whole = record
                || summed
                || !lots
                        && columns(Meaning.AMOUNT).stream()
                                .anyMatch(column -> body.closes(column.place())
                                        || body.isRound(column.place())
                                        || body.namesPhases());
        return !names().isEmpty() && shelf && !shares && !whole && !phases && (lots || priced || noAmounts);
    }

    private boolean hasTotal() {
        return java.util.stream.IntStream.rangeClosed(first, last)
                .anyMatch(row -> grid.rows().get(row).stream().anyMatch(cell -> RowWords.isTotal(cell.text())));
    }
}
