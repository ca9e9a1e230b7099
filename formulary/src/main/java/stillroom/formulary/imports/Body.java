package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The rows of a table that look like lines, whatever its columns mean: a text and a figure beside it.
 *
 * @param rows places of those, or of all rows that hold anything where there are hardly any
 * @param sums places of rows with a figure that by their words, or by having none, are no lines
 */
record Body(Table table, Terms terms, List<Integer> rows, List<Integer> sums) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR = new BigDecimal("0.0005");

    static Body of(Table table, Terms terms) {
        List<Integer> lines = new ArrayList<>();
        List<Integer> sums = new ArrayList<>();
        List<Integer> filled = new ArrayList<>();
        for (int row = table.first(); row <= table.last(); row++) {
            List<Cell> cells = table.grid().rows().get(row).stream()
                    .filter(cell -> !cell.isBlank())
                    .toList();
            String words = cells.stream()
                    .filter(cell -> cell.number().isEmpty()
                            && cell.text().matches(".*\\p{L}{3}.*")
                            && !FigureReading.text(cell.text(), terms.mark()).isAmount())
                    .map(Cell::text)
                    .findFirst()
                    .orElse("");
            boolean figure = cells.stream()
                    .anyMatch(cell -> FigureReading.read(cell, terms.mark()).isAmount());
            if (!cells.isEmpty()) {
                filled.add(row);
            }
            if (figure && !words.isEmpty() && !RowWords.isTotal(words) && !RowWords.isFact(words)) {
                lines.add(row);
            } else if (figure
                    && (words.isEmpty() || RowWords.isTotal(words))
                    && cells.stream().noneMatch(cell -> RowWords.isFact(cell.text()))) {
                sums.add(row);
            }
        }
        return new Body(table, terms, List.copyOf(lines.size() < 2 ? filled : lines), List.copyOf(sums));
    }

    Content content(int place) {
        return Content.of(table, terms, rows, place);
    }

    Figure figure(int row, int place) {
        return FigureReading.leniently(table.grid().cell(row, place), terms.mark());
    }

    /** Whether the figures of a column say themselves that they are the amounts: they add up, or say per cent, or fill up. */
    boolean closes(int place) {
        List<Figure> figures = rows.stream()
                .map(row -> figure(row, place))
                .filter(Figure::isAmount)
                .toList();
        long shares = figures.stream()
                .filter(figure -> figure.unit().map(Unit::isShare).orElse(false))
                .count();
        boolean fills = figures.stream().anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE);
        return figures.size() > 1 && (fills || shares * 2 > figures.size() || isSummed(place, figures));
    }

    private boolean isSummed(int place, List<Figure> figures) {
        BigDecimal sum = figures.stream().map(Figure::middle).reduce(BigDecimal.ZERO, BigDecimal::add);
        boolean stated = sums.stream()
                .map(row -> figure(row, place))
                .anyMatch(figure -> figure.isNumber() && isNear(figure.middle(), sum));
        BigDecimal last = figures.get(figures.size() - 1).middle();
        boolean lastStates = figures.size() > 3 && isNear(last, sum.subtract(last));
        return stated
                || lastStates
                || isNear(HUNDRED, sum)
                || isNear(BigDecimal.ONE, sum)
                || !blocks(place).isEmpty();
    }

    /** The rows that are sums of phases by the figures of a column. */
    private java.util.Map<Integer, RowKind> blocks(int place) {
        List<SumRows.Item> items = IntStream.concat(
                        rows.stream().mapToInt(row -> row), sums.stream().mapToInt(row -> row))
                .sorted()
                .filter(row -> figure(row, place).isNumber())
                .mapToObj(row -> new SumRows.Item(row, figure(row, place).middle(), isOpen(row)))
                .toList();
        return SumRows.of(items);
    }

    private boolean isOpen(int row) {
        return table.grid().rows().get(row).stream()
                .noneMatch(cell -> terms.knownName().test(cell.text()));
    }

    /** Whether the figures of a column come to a round sum, as what somebody weighs does. */
    boolean isRound(int place) {
        return Confirmed.isRound(
                rows.stream().map(row -> figure(row, place).middle()).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** Whether two columns of figures are the same amounts in other units. */
    boolean isAlike(int one, int other) {
        List<Double> ratios = rows.stream()
                .filter(row -> figure(row, one).middle().signum() > 0
                        && figure(row, other).middle().signum() > 0)
                .map(row -> figure(row, other).middle().doubleValue()
                        / figure(row, one).middle().doubleValue())
                .sorted()
                .toList();
        return ratios.size() > 2 && ratios.get(ratios.size() - 1) / ratios.get(0) - 1 <= 0.02;
    }

    /** Whether rows of their own name the phases in a form that can be nothing else. */
    boolean namesPhases() {
        return IntStream.rangeClosed(table.first(), table.last())
                .mapToObj(row -> table.grid().rows().get(row).stream()
                        .filter(cell -> !cell.isBlank())
                        .toList())
                .filter(cells -> cells.size() == 1 || cells.size() == 2)
                .anyMatch(cells -> RowWords.isPhaseForCertain(cells.get(0).text()));
    }

    private static boolean isNear(BigDecimal wanted, BigDecimal sum) {
        return wanted.subtract(sum).abs().compareTo(wanted.abs().multiply(NEAR)) <= 0;
    }
}
