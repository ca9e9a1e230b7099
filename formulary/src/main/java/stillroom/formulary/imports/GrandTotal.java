package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Whether the total at the end of several tables below each other is that of all of them: then they are phases of one formula. */
record GrandTotal(Grid grid, Terms terms, Table first, List<Table> others) {
    boolean isStated() {
        Table last = others.get(others.size() - 1);
        return first.columns(Meaning.AMOUNT).stream().anyMatch(column -> {
            BigDecimal sum = BigDecimal.ZERO;
            int stated = -1;
            for (int row = first.first(); row <= last.last(); row++) {
                Optional<BigDecimal> figure = figure(row, column.place());
                boolean total = isTotal(row);
                stated = total
                                && row >= last.first()
                                && figure.filter(isNear(sum)).isPresent()
                        ? row
                        : stated;
                sum = total || figure.isEmpty() ? sum : sum.add(figure.get());
            }
            return stated >= 0 && sum.signum() > 0;
        });
    }

    private static java.util.function.Predicate<BigDecimal> isNear(BigDecimal sum) {
        return figure -> SumRows.isNear(figure, sum);
    }

    private Optional<BigDecimal> figure(int row, int place) {
        return Optional.of(FigureReading.read(grid.cell(row, place), terms.mark()))
                .filter(Figure::isNumber)
                .map(Figure::middle);
    }

    private boolean isTotal(int row) {
        return IntStream.range(0, grid.width(row))
                .mapToObj(place -> grid.cell(row, place).text())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .filter(RowWords::isTotal)
                .isPresent();
    }
}
