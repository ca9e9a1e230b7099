package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The columns of a formula over its lines: what they hold, and the figures in them.
 *
 * @param main which column of amounts counts
 * @param contents by place of the column
 */
record LineColumns(Table table, List<Row> segment, int main, Terms terms, Map<Integer, Content> contents) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR = new BigDecimal("0.05");
    private static final double ALIKE = 0.02;

    static LineColumns of(Table table, List<Row> segment, int main, Terms terms) {
        List<Integer> lines = segment.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .map(Row::place)
                .toList();
        Map<Integer, Content> contents = new HashMap<>();
        table.columns()
                .forEach(column -> contents.put(column.place(), Content.of(table, terms, lines, column.place())));
        return new LineColumns(table, segment, main, terms, Map.copyOf(contents));
    }

    Content content(Column column) {
        return Objects.requireNonNull(contents.get(column.place()));
    }

    boolean isDecided(Column column) {
        return terms.guidance().columns().containsKey(column.place());
    }

    boolean closes() {
        List<Figure> figures = lines().stream().map(this::figure).toList();
        BigDecimal sum = figures.stream().map(Figure::middle).reduce(BigDecimal.ZERO, BigDecimal::add);
        boolean shares = figures.stream()
                .anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE
                        || figure.unit().map(Unit::isShare).orElse(false));
        boolean stated = segment.stream()
                .anyMatch(row ->
                        (row.kind() == RowKind.TOTAL || row.kind() == RowKind.SUBTOTAL || row.kind() == RowKind.PHASE)
                                && figure(row).isNumber());
        return shares
                || stated
                || isNear(sum, HUNDRED)
                || sum.subtract(BigDecimal.ONE).abs().compareTo(new BigDecimal("0.0005")) <= 0;
    }

    BigDecimal sum(Column column) {
        return lines().stream()
                .map(row -> beside(row, column).map(Figure::middle).orElse(BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    boolean isAlike(Column column) {
        List<Double> ratios = lines().stream()
                .filter(row -> figure(row).middle().signum() > 0
                        && beside(row, column)
                                .filter(figure -> figure.middle().signum() > 0)
                                .isPresent())
                .map(row -> beside(row, column).orElseThrow().middle().doubleValue()
                        / figure(row).middle().doubleValue())
                .sorted()
                .toList();
        return !ratios.isEmpty() && ratios.get(ratios.size() - 1) / ratios.get(0) - 1 <= ALIKE;
    }

    Optional<Figure> beside(Row row, Column column) {
        return Optional.of(FigureReading.read(table.grid().cell(row.place(), column.place()), terms.mark()))
                .filter(Figure::isNumber);
    }

    List<Row> lines() {
        return segment.stream().filter(row -> row.kind() == RowKind.LINE).toList();
    }

    Figure figure(Row row) {
        return main < row.figures().size() ? row.figures().get(main) : Figure.NOTHING;
    }

    static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(NEAR) <= 0;
    }
}
