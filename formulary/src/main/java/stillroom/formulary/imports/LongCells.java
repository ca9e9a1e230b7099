package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Opens cells that hold a whole formula, line below line, as notes that were exported do. */
final class LongCells {
    private static final int LINES = 3;

    private LongCells() {}

    /** The sheet with a row for each line of such a cell; the sheet itself where it has none. */
    static Grid opened(Grid grid) {
        if (grid.rows().stream().noneMatch(row -> row.stream().anyMatch(LongCells::isFormula))) {
            return grid;
        }
        List<List<Cell>> rows = new ArrayList<>();
        List<List<Cell>> records = grid.rows();
        boolean headed = records.stream().skip(1).allMatch(row -> row.stream().anyMatch(LongCells::isFormula));
        records.stream().skip(headed ? 1 : 0).forEach(row -> open(row, rows));
        return new Grid(grid.name(), rows, grid.remarks(), grid.turned());
    }

    private static void open(List<Cell> row, List<List<Cell>> rows) {
        Optional<Cell> formula = row.stream().filter(LongCells::isFormula).findFirst();
        if (formula.isEmpty()) {
            rows.add(row);
            return;
        }
        int at = row.indexOf(formula.get());
        rows.add(List.of());
        row.stream().limit(at).filter(cell -> !cell.isBlank()).forEach(cell -> rows.add(List.of(cell)));
        formula.get().text().lines().forEach(line -> rows.add(line.isBlank() ? List.of() : List.of(Cell.of(line))));
        rows.add(List.of());
    }

    private static boolean isFormula(Cell cell) {
        return cell.number().isEmpty()
                && cell.text().indexOf('\n') >= 0
                && cell.text()
                                .lines()
                                .filter(line -> InlineAmount.read(line, Optional.empty())
                                        .isPresent())
                                .limit(LINES)
                                .count()
                        == LINES;
    }
}
