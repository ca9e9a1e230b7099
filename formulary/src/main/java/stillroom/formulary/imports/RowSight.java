package stillroom.formulary.imports;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The rows of a table as they are judged: those above with what they are, those below read as lines. Not thread-safe. */
final class RowSight {
    final Table table;
    final Terms terms;
    final RowCells cells;
    final RowsAbove above;
    private final Map<Integer, Row> asLines = new HashMap<>();
    private final int lastLine;
    private final int colons;

    /** @param lines all rows of the table, read as lines */
    RowSight(Table table, Terms terms, RowCells cells, RowsAbove above, List<Row> lines) {
        this.table = table;
        this.terms = terms;
        this.cells = cells;
        this.above = above;
        lines.forEach(line -> asLines.put(line.place(), line));
        this.lastLine = lines.stream()
                .filter(this::isCertainLine)
                .mapToInt(Row::place)
                .max()
                .orElse(-1);
        this.colons = (int) lines.stream().filter(this::endsWithColon).count();
    }

    static String name(Row line) {
        return line.names().isEmpty() ? "" : line.names().get(0);
    }

    Optional<Row> asLine(int place) {
        return Optional.ofNullable(asLines.get(place));
    }

    /** The rows below one, read as lines, down to the end of the table. */
    List<Row> below(int place, int most) {
        return IntStream.rangeClosed(place + 1, Math.min(place + most, table.last()))
                .mapToObj(asLines::get)
                .filter(row -> row != null)
                .toList();
    }

    /** Place of the last row that is certainly a line; -1 without one. */
    int lastLine() {
        return lastLine;
    }

    boolean isKnown(Row line) {
        return terms.knownName().test(name(line)) && !RowWords.isPhaseNumbered(name(line));
    }

    /** A remark below everything may speak of a phase: "No gel phase", "1. Heat phase A". */
    boolean isBehindAll(Row line) {
        return above.afterClosingTotal() && line.place() > lastLine;
    }

    boolean isCertainLine(Row line) {
        String first = cells.firstText(line.place());
        return line.hasAmount()
                && !line.names().isEmpty()
                && !RowWords.isTotal(first)
                && !RowWords.isTotal(name(line))
                && !RowWords.isFact(first);
    }

    boolean isLineBelow(int place) {
        return asLine(place + 1)
                .filter(next -> next.hasAmount() && !next.names().isEmpty())
                .isPresent();
    }

    boolean isAlone(Row line) {
        return table.columns().stream()
                        .filter(column ->
                                !table.grid().cell(line.place(), column.place()).isBlank())
                        .count()
                == 1;
    }

    /** A few words ended by a colon right above a line, as at least one more row: "Melt:", "Stir in:". */
    boolean isAnnouncement(Row line) {
        return colons > 1 && endsWithColon(line);
    }

    private boolean endsWithColon(Row line) {
        String first = cells.firstText(line.place());
        return first.endsWith(":")
                && first.length() <= 30
                && !line.hasAmount()
                && isAlone(line)
                && isLineBelow(line.place())
                && !RowWords.isFact(first)
                && !RowWords.isMethod(first)
                && !RowWords.isList(first);
    }
}
