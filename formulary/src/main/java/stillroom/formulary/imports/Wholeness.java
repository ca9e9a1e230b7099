package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;

/** Whether the amounts of a table make up a product by themselves. */
record Wholeness(Table table, Terms terms) {
    private static final BigDecimal NEARLY = new BigDecimal("99.5");

    boolean isWhole() {
        List<Row> rows = new RowReading(table, terms).read();
        boolean toWhole = rows.stream()
                .flatMap(row -> row.figures().stream())
                .anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE);
        boolean total = rows.stream().anyMatch(row -> row.kind() == RowKind.TOTAL);
        BigDecimal sum = rows.stream()
                .filter(row -> row.kind() == RowKind.LINE && !row.figures().isEmpty())
                .map(row -> row.figures().get(0).middle())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return toWhole || total || sum.compareTo(NEARLY) >= 0;
    }
}
