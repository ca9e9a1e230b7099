package stillroom.ledger.imports;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Cell.Trait;

/** Repeats what stands in cells that are merged downwards, marked as repeated: one phase beside its five lines. */
final class Merging {
    private static final Pattern RANGE = Pattern.compile("([A-Z]{1,3})(\\d{1,7}):([A-Z]{1,3})(\\d{1,7})");

    private Merging() {}

    static List<List<Cell>> fill(List<List<Cell>> rows, List<String> merged) {
        List<List<Cell>> filled = new ArrayList<>();
        rows.forEach(row -> filled.add(new ArrayList<>(row)));
        for (String range : merged) {
            Matcher parts = RANGE.matcher(range);
            if (parts.matches()) {
                int first = Integer.parseInt(parts.group(2)) - 1;
                int last = Math.min(Integer.parseInt(parts.group(4)) - 1, filled.size() - 1);
                fill(filled, column(parts.group(1)), first, last);
            }
        }
        return filled;
    }

    private static void fill(List<List<Cell>> rows, int column, int first, int last) {
        if (first < 0 || first >= rows.size() || column >= rows.get(first).size()) {
            return;
        }
        Cell upper = rows.get(first).get(column);
        if (upper.isBlank()) {
            return;
        }
        Set<Trait> traits = new HashSet<>(upper.traits());
        traits.add(Trait.MERGED);
        Cell copy = new Cell(upper.text(), upper.number(), traits);
        for (int row = first + 1; row <= last; row++) {
            List<Cell> cells = rows.get(row);
            while (cells.size() <= column) {
                cells.add(Cell.EMPTY);
            }
            cells.set(column, copy);
        }
    }

    private static int column(String letters) {
        int column = 0;
        for (char letter : letters.toCharArray()) {
            column = column * 26 + (letter - 'A' + 1);
        }
        return column - 1;
    }
}
