package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;

/**
 * The cells of one sheet. Rows and columns are counted from 0; addresses are written as spreadsheets write them.
 *
 * @param name of the sheet; that of the file where a file has no sheets
 * @param remarks what was noticed when the file was opened, in sentences
 * @param turned whether rows and columns were changed over after reading
 */
public record Grid(String name, List<List<Cell>> rows, List<String> remarks, boolean turned) {
    public Grid {
        rows = rows.stream()
                .map(row -> isRuler(row) ? List.<Cell>of() : List.copyOf(row))
                .toList();
        remarks = List.copyOf(remarks);
    }

    public Grid(String name, List<List<Cell>> rows) {
        this(name, rows, List.of(), false);
    }

    /** A line drawn with signs, as under headings in a text. */
    private static boolean isRuler(List<Cell> row) {
        int signs = row.stream().mapToInt(cell -> cell.text().length()).sum();
        return signs >= 3
                && row.stream()
                        .allMatch(cell -> cell.number().isEmpty() && cell.text().matches("[^\\p{L}\\p{N}]*"));
    }

    public int height() {
        return rows.size();
    }

    public int width() {
        return rows.stream().mapToInt(List::size).max().orElse(0);
    }

    /** How far a row reaches; cells further right are empty. */
    int width(int row) {
        return row >= 0 && row < rows.size() ? rows.get(row).size() : 0;
    }

    /** The cell at a place; an empty one beyond what the file holds. */
    public Cell cell(int row, int column) {
        if (row < 0 || row >= rows.size() || column < 0) {
            return Cell.EMPTY;
        }
        List<Cell> cells = rows.get(row);
        return column < cells.size() ? cells.get(column) : Cell.EMPTY;
    }

    /** As in "C7", where the file has it: also after turning. */
    public String address(int row, int column) {
        return turned ? letters(row) + (column + 1) : letters(column) + (row + 1);
    }

    /** The same cells with rows and columns changed over. */
    public Grid turnedOver() {
        List<List<Cell>> over = new ArrayList<>();
        for (int column = 0; column < width(); column++) {
            List<Cell> cells = new ArrayList<>();
            for (int row = 0; row < height(); row++) {
                cells.add(cell(row, column));
            }
            over.add(cells);
        }
        return new Grid(name, over, remarks, !turned);
    }

    /** The same sheet with all cells empty but those in these rows and columns. */
    Grid only(int top, int bottom, int left, int right) {
        List<List<Cell>> part = new ArrayList<>();
        for (int row = 0; row < height(); row++) {
            List<Cell> cells = new ArrayList<>();
            for (int column = 0; column <= right && row >= top && row <= bottom; column++) {
                cells.add(column < left ? Cell.EMPTY : cell(row, column));
            }
            part.add(cells);
        }
        return new Grid(name, part, remarks, turned);
    }

    /** "A" for 0, "AA" for 26. */
    public static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
            letters.insert(0, (char) ('A' + rest % 26));
        }
        return letters.toString();
    }
}
