package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Parts the rows of a table where one formula ends and the next begins without headings of its own. */
record Segments(List<Row> rows, int main) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR = new BigDecimal("0.5");

    List<List<Row>> find() {
        List<List<Row>> segments = new ArrayList<>();
        List<Row> segment = new ArrayList<>();
        boolean closed = false;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            boolean begins = row.kind() == RowKind.LINE || row.kind() == RowKind.TITLE || row.kind() == RowKind.PHASE;
            if (begins
                    && hasLines(segment)
                    && (closed || row.kind() == RowKind.TITLE && isWhole(segment))
                    && linesFrom(i) > 1) {
                segments.add(segment);
                segment = new ArrayList<>();
                closed = false;
            }
            segment.add(row);
            closed = closed || row.kind() == RowKind.TOTAL && hasLines(segment) && closes(row, segment, i);
        }
        segments.add(segment);
        return segments.stream().filter(Segments::hasLines).toList();
    }

    private static boolean hasLines(List<Row> segment) {
        return segment.stream().anyMatch(row -> row.kind() == RowKind.LINE);
    }

    private long linesFrom(int from) {
        return rows.stream()
                .skip(from)
                .filter(row -> row.kind() == RowKind.LINE)
                .count();
    }

    /** Whether a total ends a formula; a total of a phase says so, or is smaller than the whole that comes at the end. */
    private boolean closes(Row total, List<Row> segment, int place) {
        if (isWhole(segment) || isNear(figure(total), HUNDRED)) {
            return true;
        }
        BigDecimal all = sum(rows.stream().limit(place).toList())
                .add(sum(rows.stream().skip(place).toList()));
        boolean grand = rows.stream()
                .skip(place + 1)
                .filter(row -> row.kind() == RowKind.TOTAL)
                .anyMatch(row -> isNear(figure(row), all));
        return !grand;
    }

    private boolean isWhole(List<Row> segment) {
        boolean toWhole = segment.stream()
                .filter(row ->
                        row.kind() == RowKind.LINE && main < row.figures().size())
                .anyMatch(row -> row.figures().get(main).kind() == Figure.Kind.TO_WHOLE);
        return toWhole || isNear(sum(segment), HUNDRED);
    }

    private BigDecimal figure(Row row) {
        return main < row.figures().size() ? row.figures().get(main).middle() : BigDecimal.ZERO;
    }

    private BigDecimal sum(List<Row> of) {
        return of.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .map(this::figure)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(NEAR) <= 0;
    }
}
