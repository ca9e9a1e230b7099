package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Tells from their figures which rows of a table are sums of others. Not thread-safe. */
final class RowTotals {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int LOOKED_AT = 60;

    private final RowSight sight;
    private final Map<Integer, RowKind> sums;

    RowTotals(RowSight sight, List<Row> lines) {
        this.sight = sight;
        this.sums = sums(lines);
    }

    /** The rows that are sums by their figures, in the first column of amounts that shows any. */
    private Map<Integer, RowKind> sums(List<Row> lines) {
        for (int column = 0; column < sight.table.columns(Meaning.AMOUNT).size(); column++) {
            List<SumRows.Item> items = new ArrayList<>();
            boolean open = false;
            for (Row line : lines) {
                Figure figure = figure(line, column);
                open = open || figure.isAmount() && !figure.isNumber();
                if (figure.isNumber()
                        && !sight.table.heads().contains(line.place())
                        && !RowWords.isFact(RowSight.name(line))) {
                    items.add(new SumRows.Item(line.place(), figure.middle(), mayBeSum(line)));
                }
            }
            Map<Integer, RowKind> found = open ? Map.of() : SumRows.of(items);
            if (!found.isEmpty()) {
                return found;
            }
        }
        return Map.of();
    }

    private static Figure figure(Row row, int column) {
        return column < row.figures().size() ? row.figures().get(column) : Figure.NOTHING;
    }

    private boolean mayBeSum(Row line) {
        return line.names().isEmpty()
                || line.cas().isEmpty() && line.names().stream().noneMatch(sight.terms.knownName());
    }

    /** What a row is by its figures, where all sums of the table part it without a rest. */
    java.util.Optional<RowKind> of(Row line) {
        return java.util.Optional.ofNullable(sums.get(line.place()));
    }

    /** A row that calls itself a total: of all, or of a phase. */
    RowKind named(Row line, String phase) {
        String first = Folding.of(sight.cells.firstText(line.place()));
        String name = Folding.of(RowSight.name(line));
        boolean ofPhase = RowWords.isOfAPhase(first)
                || RowWords.isOfAPhase(name)
                || !phase.isEmpty() && (first.endsWith(" " + phase) || name.endsWith(" " + phase));
        return ofPhase || sums.get(line.place()) == RowKind.SUBTOTAL || isCountedOn(line)
                ? RowKind.SUBTOTAL
                : RowKind.TOTAL;
    }

    /** Whether lines follow and then a total of them all, those above included. */
    private boolean isCountedOn(Row line) {
        List<Row> below = sight.below(line.place(), LOOKED_AT);
        for (int i = 0; i < line.figures().size(); i++) {
            BigDecimal sum = sight.above.all(i);
            int more = 0;
            for (Row row : below) {
                Figure figure = figure(row, i);
                boolean total =
                        RowWords.isTotal(sight.cells.firstText(row.place())) || RowWords.isTotal(RowSight.name(row));
                if (total && more > 0 && figure.isNumber() && SumRows.isNear(figure.middle(), sum)) {
                    return true;
                }
                boolean line2 = !total && figure.isNumber() && !row.names().isEmpty();
                sum = line2 ? sum.add(figure.middle()) : sum;
                more += line2 ? 1 : 0;
            }
        }
        return false;
    }

    /** Whether the figure of a row is the sum of lines right below. */
    boolean isSumOfNext(Row line) {
        for (int i = 0; i < line.figures().size(); i++) {
            int column = i;
            List<BigDecimal> below = sight.below(line.place(), LOOKED_AT).stream()
                    .map(row -> figure(row, column))
                    .filter(Figure::isNumber)
                    .map(Figure::middle)
                    .toList();
            int least = sight.above.hasSummedPhase() ? 1 : 2;
            if (figure(line, i).isNumber()
                    && SumRows.isSumOfNext(figure(line, i).middle(), below, least)) {
                return true;
            }
        }
        return false;
    }

    /** A figure without a name: the sum of what stands above, or something that was forgotten. */
    RowKind unnamed(Row line) {
        RowsAbove above = sight.above;
        for (int i = 0; i < line.figures().size(); i++) {
            Figure figure = line.figures().get(i);
            if (!figure.isNumber()) {
                continue;
            }
            if (SumRows.isNear(figure.middle(), above.sinceTotal(i))) {
                return RowKind.TOTAL;
            }
            if (SumRows.isNear(figure.middle(), above.sincePhase(i))) {
                return RowKind.SUBTOTAL;
            }
            if (SumRows.isNear(figure.middle(), HUNDRED) && above.fillsUp(i)) {
                return RowKind.TOTAL;
            }
        }
        return RowKind.LINE;
    }

    /** As much as all lines above together, and not what fills them up to 100: a total, in whatever language. */
    boolean isTotalByValue(Row line) {
        RowsAbove above = sight.above;
        if (above.lines() < 3) {
            return false;
        }
        for (int i = 0; i < line.figures().size(); i++) {
            Figure figure = line.figures().get(i);
            BigDecimal sum = above.sinceTotal(i);
            BigDecimal both = sum.add(figure.middle());
            if (SumRows.isNear(figure.middle(), HUNDRED) && above.fillsUp(i)) {
                return true;
            }
            boolean fills = SumRows.isNear(both, HUNDRED) || SumRows.isNear(both, BigDecimal.ONE);
            if (figure.kind() == Figure.Kind.EXACT && SumRows.isNear(figure.middle(), sum) && !fills) {
                return true;
            }
        }
        return false;
    }

    /** Whether a row stands behind the total that closed the formula, with no further total below. */
    boolean isBehindLast(Row line) {
        return sight.above.afterClosingTotal()
                && sight.below(line.place(), LOOKED_AT).stream()
                        .noneMatch(row -> RowWords.isTotal(sight.cells.firstText(row.place()))
                                || row.hasAmount() && sight.isKnown(row));
    }
}
