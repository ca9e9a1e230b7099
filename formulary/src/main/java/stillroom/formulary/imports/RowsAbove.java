package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The rows of a table judged so far, with what they come to. Not thread-safe. */
final class RowsAbove {
    private final List<Row> rows = new ArrayList<>();
    private final Running sinceTotal = new Running();
    private final Running sincePhase = new Running();
    private final List<BigDecimal> all = new ArrayList<>();
    private boolean closed;
    private int lines;
    private int phases;
    private boolean afterTotal;
    private boolean barePhases;
    private boolean summedPhases;

    /** Sums of the columns of amounts since the last row that ends them. */
    private static final class Running {
        private final List<BigDecimal> sums = new ArrayList<>();
        private int count;
        private boolean ended;

        void end() {
            ended = true;
        }

        void add(Row line) {
            if (ended) {
                sums.clear();
                count = 0;
                ended = false;
            }
            count++;
            for (int i = 0; i < line.figures().size(); i++) {
                BigDecimal value = line.figures().get(i).middle();
                if (i < sums.size()) {
                    sums.set(i, sums.get(i).add(value));
                } else {
                    sums.add(value);
                }
            }
        }

        /** The sum; -1 where it is of less than two lines. */
        BigDecimal sum(int column) {
            return count > 1 && column < sums.size() ? sums.get(column) : BigDecimal.ONE.negate();
        }
    }

    void add(Row row) {
        rows.add(row);
        switch (row.kind()) {
            case LINE -> addLine(row);
            case TOTAL -> {
                closed = closes(row);
                sinceTotal.end();
                sincePhase.end();
                afterTotal = true;
            }
            case PHASE -> {
                phases++;
                summedPhases = summedPhases || row.hasAmount();
                barePhases = barePhases
                        || !row.names().isEmpty()
                                && row.text().equals(row.names().get(0));
                sincePhase.end();
            }
            case SUBTOTAL, BLANK -> sincePhase.end();
            case TITLE -> {
                sinceTotal.end();
                closed = false;
            }
            case HEADING, NOTE, LEFT_OUT -> {}
        }
    }

    private void addLine(Row line) {
        lines++;
        afterTotal = false;
        closed = false;
        sinceTotal.add(line);
        sincePhase.add(line);
        for (int i = 0; i < line.figures().size(); i++) {
            BigDecimal value = line.figures().get(i).middle();
            if (i < all.size()) {
                all.set(i, all.get(i).add(value));
            } else {
                all.add(value);
            }
        }
    }

    private boolean closes(Row total) {
        for (int i = 0; i < total.figures().size(); i++) {
            Figure figure = total.figures().get(i);
            if (figure.isNumber() && (SumRows.isNear(figure.middle(), all(i)) || fillsUp(i))) {
                return true;
            }
        }
        return false;
    }

    /** Whether the last total was that of all lines above and no line came since. */
    boolean afterClosingTotal() {
        return closed;
    }

    List<Row> rows() {
        return rows;
    }

    int lines() {
        return lines;
    }

    boolean hasLine() {
        return lines > 0;
    }

    boolean hasPhase() {
        return phases > 0;
    }

    /** Whether the row of a phase stated the sum of the phase. */
    boolean hasSummedPhase() {
        return summedPhases;
    }

    /** Whether a phase was a name with nothing beside it. */
    boolean hasBarePhase() {
        return barePhases;
    }

    boolean afterTotal() {
        return afterTotal;
    }

    boolean endsWith(RowKind kind) {
        return !rows.isEmpty() && rows.get(rows.size() - 1).kind() == kind;
    }

    /** The sum of a column since the last total; -1 of less than two lines. */
    BigDecimal sinceTotal(int column) {
        return sinceTotal.sum(column);
    }

    /** The sum of a column since the last phase began; -1 of less than two lines. */
    BigDecimal sincePhase(int column) {
        return sincePhase.sum(column);
    }

    /** The sum of the first column of amounts. */
    BigDecimal all() {
        return all(0);
    }

    /** The sum of a column. */
    BigDecimal all(int column) {
        return column < all.size() ? all.get(column) : BigDecimal.ZERO;
    }

    boolean fillsUp(int column) {
        return rows.stream()
                .filter(row ->
                        row.kind() == RowKind.LINE && column < row.figures().size())
                .map(row -> row.figures().get(column).kind())
                .anyMatch(kind -> kind == Figure.Kind.TO_WHOLE || kind == Figure.Kind.AS_NEEDED);
    }
}
