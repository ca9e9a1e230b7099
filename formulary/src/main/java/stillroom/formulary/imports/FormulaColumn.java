package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A column that names for each line the formula to which it belongs: several formulas below each other in one table. */
record FormulaColumn(Table table, List<Row> rows) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** The rows of one formula with its name. */
    record Part(String title, List<Row> rows) {}

    /** The parts; empty where no column parts the lines so that each part makes 100. */
    List<Part> parts() {
        return table.columns().stream()
                .filter(column -> column.meaning() == Meaning.LEFT_OUT
                        || column.meaning() == Meaning.NOTE
                        || column.meaning() == Meaning.FORMULA)
                .map(column -> parts(column.place()))
                .flatMap(Optional::stream)
                .max(Comparator.comparingLong(parts -> letters(parts.get(0).title())))
                .orElse(List.of());
    }

    private static long letters(String text) {
        return text.chars().filter(Character::isLetter).count();
    }

    private Optional<List<Part>> parts(int place) {
        List<Part> parts = new ArrayList<>();
        String before = "";
        for (Row row : rows) {
            String said = table.grid().cell(row.place(), place).text();
            boolean begins = row.kind() == RowKind.LINE && !said.isEmpty() && !said.equals(before);
            if (begins) {
                parts.add(new Part(said, new ArrayList<>()));
                before = said;
            }
            if (!parts.isEmpty()) {
                parts.get(parts.size() - 1).rows().add(row);
            } else if (row.kind() == RowKind.LINE) {
                return Optional.empty();
            }
        }
        boolean apart = parts.size() > 1
                && parts.stream().map(Part::title).distinct().count() == parts.size()
                && parts.stream().allMatch(part -> isWhole(part.rows()));
        return apart ? Optional.of(parts) : Optional.empty();
    }

    /** Whether a column of amounts makes 100 over several lines, or is filled up to it. */
    private static boolean isWhole(List<Row> part) {
        List<Row> lines = part.stream()
                .filter(row -> row.kind() == RowKind.LINE && !row.figures().isEmpty())
                .toList();
        int columns = lines.stream().mapToInt(row -> row.figures().size()).min().orElse(0);
        for (int i = 0; i < columns; i++) {
            int column = i;
            BigDecimal sum = lines.stream()
                    .map(row -> row.figures().get(column).middle())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            boolean fills =
                    lines.stream().anyMatch(row -> row.figures().get(column).kind() == Figure.Kind.TO_WHOLE);
            if (lines.size() > 1 && (fills || SumRows.isNear(sum, HUNDRED))) {
                return true;
            }
        }
        return false;
    }
}
