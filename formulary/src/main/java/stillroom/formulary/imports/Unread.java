package stillroom.formulary.imports;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Rows that look like lines and were taken for none, in the whole sheet.
 *
 * @param behind rows below a total that closed its formula
 */
record Unread(Grid grid, Terms terms, Map<Integer, RowKind> kinds, java.util.Set<Integer> behind) {
    private static final int SHOWN = 5;

    Optional<Flag> flag() {
        List<Integer> unread =
                IntStream.range(0, grid.height()).filter(this::isUnread).boxed().toList();
        if (unread.isEmpty()) {
            return Optional.empty();
        }
        String rows = unread.stream()
                .limit(SHOWN)
                .map(row -> row + 1 + " (\"" + LineLike.name(grid.rows().get(row), terms) + "\")")
                .collect(Collectors.joining(", "));
        return Optional.of(Flag.doubt("These rows hold a name and a figure and were taken for no line: " + rows
                + (unread.size() > SHOWN ? " and " + (unread.size() - SHOWN) + " more." : ".")));
    }

    /** Behind a total that closed, unless a material is named there. */
    private boolean isExplained(int row) {
        return behind.contains(row)
                && grid.rows().get(row).stream()
                        .noneMatch(cell -> terms.knownName().test(cell.text()));
    }

    private boolean isUnread(int row) {
        return switch (kinds.getOrDefault(row, RowKind.NOTE)) {
            case NOTE, TITLE, BLANK ->
                terms.guidance().rows().get(row) == null
                        && !isExplained(row)
                        && !LineLike.name(grid.rows().get(row), terms).isEmpty()
                        && RowWords.batch(LineLike.name(grid.rows().get(row), terms))
                                .isEmpty();
            case LINE, PHASE, TOTAL, SUBTOTAL, HEADING, LEFT_OUT -> false;
        };
    }
}
