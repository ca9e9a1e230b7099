package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Parts a sheet where a column that is empty from top to bottom has lines on both sides, and where below an empty row the names
 * stand in other columns than above.
 */
final class Islands {
    private static final int LINES = 3;

    private Islands() {}

    /** The parts from left to right, each at its place in the sheet. */
    static List<Grid> of(Grid grid, Terms terms) {
        List<Grid> parts = new ArrayList<>();
        int left = 0;
        int width = grid.width();
        for (int column = 1; column < width; column++) {
            if (isEmpty(grid, column)
                    && hasLines(grid, left, column - 1, terms)
                    && hasLines(grid, column + 1, width - 1, terms)) {
                parts.add(grid.only(0, grid.height() - 1, left, column - 1));
                left = column + 1;
            }
        }
        parts.add(left == 0 ? grid : grid.only(0, grid.height() - 1, left, width - 1));
        return parts.stream().flatMap(part -> below(part, terms).stream()).toList();
    }

    private static List<Grid> below(Grid grid, Terms terms) {
        List<Grid> parts = new ArrayList<>();
        int top = 0;
        int gap = -1;
        Set<Integer> named = new HashSet<>();
        for (int row = 0; row < grid.height(); row++) {
            if (mayPart(grid, row) && gap < 0) {
                gap = row;
            }
            Set<Integer> here = named(grid, row, terms);
            if (here.isEmpty()) {
                continue;
            }
            if (gap >= 0 && !named.isEmpty() && here.stream().noneMatch(named::contains)) {
                parts.add(grid.only(top, gap, 0, grid.width() - 1));
                top = gap + 1;
                named.clear();
            }
            named.addAll(here);
            gap = -1;
        }
        parts.add(top == 0 ? grid : grid.only(top, grid.height() - 1, 0, grid.width() - 1));
        return parts;
    }

    /** An empty row that is not followed by how the formula above is made. */
    private static boolean mayPart(Grid grid, int row) {
        String next = grid.rows().subList(row, Math.min(row + 4, grid.height())).stream()
                .flatMap(List::stream)
                .filter(cell -> !cell.isBlank())
                .map(Cell::text)
                .findFirst()
                .orElse("");
        return grid.rows().get(row).stream().allMatch(Cell::isBlank)
                && !RowWords.isMethod(next)
                && !RowWords.isTotal(next)
                && !Talk.is(next);
    }

    /** The columns in which a line names a material that is known. */
    private static Set<Integer> named(Grid grid, int row, Terms terms) {
        List<Cell> cells = grid.rows().get(row);
        return LineLike.name(cells, terms).isEmpty()
                ? Set.of()
                : IntStream.range(0, cells.size())
                        .filter(place -> terms.knownName().test(cells.get(place).text()))
                        .boxed()
                        .collect(Collectors.toSet());
    }

    private static boolean isEmpty(Grid grid, int column) {
        return IntStream.range(0, grid.height())
                .allMatch(row -> grid.cell(row, column).isBlank());
    }

    private static boolean hasLines(Grid grid, int left, int right, Terms terms) {
        return IntStream.range(0, grid.height())
                        .filter(row -> !LineLike.name(
                                        IntStream.rangeClosed(left, right)
                                                .mapToObj(column -> grid.cell(row, column))
                                                .toList(),
                                        terms)
                                .isEmpty())
                        .limit(LINES)
                        .count()
                == LINES;
    }
}
