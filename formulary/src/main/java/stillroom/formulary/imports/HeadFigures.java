package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Tells figures in a row of headings, such as "for 500 g" or the number of a trial, from those of a line. */
record HeadFigures(Grid grid, int row, List<Column> columns) {
    private static final int LOOKED_AT = 4;

    /** Whether a cell holds a figure under which no column is meant: then the row is a line. */
    boolean any() {
        return columns.stream().anyMatch(this::isOfALine);
    }

    private boolean isOfALine(Column column) {
        Cell cell = grid.cell(row, column.place());
        if (cell.number().isPresent()) {
            return !cell.is(Cell.Trait.DAY)
                    && (column.guessed()
                            ? !isTrial(cell) && !isSize(column)
                            : column.whole().isEmpty());
        }
        boolean figure = FigureReading.text(cell.text(), Optional.empty()).isAmount();
        if (!figure || cell.text().chars().noneMatch(Character::isDigit) && announces()) {
            return false;
        }
        return column.guessed() ? !isTrial(cell) : column.whole().isEmpty() || isMassOfALine(column);
    }

    /** A bare small number above a column of amounts may be the number of a trial. */
    private static boolean isTrial(Cell cell) {
        return cell.text().matches("\\d{1,2}");
    }

    /** Names and two more columns are announced: "Balance" is then a word and no amount. */
    private boolean announces() {
        return columns.stream().anyMatch(column -> column.meaning().names())
                && columns.stream().filter(column -> !column.guessed()).count() > 2;
    }

    /** "100", "500" above columns of figures that are no larger, in a row that announces names: sizes of the batch. */
    private boolean isSize(Column column) {
        Cell cell = grid.cell(row, column.place());
        List<Cell> below = below(column);
        return announces()
                && cell.text().matches("\\d{2,6}")
                && below.size() > 1
                && below.stream()
                        .allMatch(one -> one.number()
                                .filter(value -> value.compareTo(cell.number().orElseThrow()) <= 0)
                                .isPresent());
    }

    /** "25 g" above "15 g": one line above another. */
    private boolean isMassOfALine(Column column) {
        boolean bare = grid.cell(row, column.place()).text().matches("\\d.*");
        return bare
                && below(column).stream()
                        .anyMatch(cell -> cell.number().isEmpty()
                                && FigureReading.text(cell.text(), Optional.empty())
                                        .unit()
                                        .isPresent());
    }

    private List<Cell> below(Column column) {
        return IntStream.rangeClosed(row + 1, row + LOOKED_AT)
                .mapToObj(below -> grid.cell(below, column.place()))
                .filter(cell -> !cell.isBlank())
                .toList();
    }
}
