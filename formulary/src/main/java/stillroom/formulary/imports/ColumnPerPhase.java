package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A table with one column of amounts for each phase: every line has its amount in the column of its phase. */
final class ColumnPerPhase {
    private ColumnPerPhase() {}

    /** The rows with one amount each and the phase of its column; the rows themselves where the table is no such one. */
    static List<Row> joined(Table table, List<Row> rows) {
        List<Column> columns = table.columns(Meaning.AMOUNT);
        List<Row> lines =
                rows.stream().filter(row -> row.kind() == RowKind.LINE).toList();
        boolean phases =
                columns.size() > 1 && columns.stream().allMatch(column -> RowWords.isPhaseAlone(phase(column)));
        boolean each = lines.size() > 1
                && lines.stream()
                        .allMatch(row -> row.figures().size() == columns.size()
                                && filled(row).size() == 1);
        if (!phases || !each) {
            return rows;
        }
        List<Row> joined = new ArrayList<>();
        for (Row row : rows) {
            joined.add(
                    row.kind() == RowKind.LINE
                            ? joined(row, phase(columns.get(filled(row).get(0))))
                            : bare(row));
        }
        return joined;
    }

    private static List<Integer> filled(Row row) {
        return IntStream.range(0, row.figures().size())
                .filter(place -> row.figures().get(place).isAmount())
                .boxed()
                .toList();
    }

    private static Row joined(Row row, String phase) {
        return new Row(
                row.place(),
                row.kind(),
                phase,
                row.names(),
                row.cas(),
                row.note(),
                row.text(),
                List.of(row.figures().get(filled(row).get(0))),
                row.flags());
    }

    /** Totals of columns are totals of phases and not compared. */
    private static Row bare(Row row) {
        return new Row(
                row.place(),
                row.kind(),
                row.phase(),
                row.names(),
                row.cas(),
                row.note(),
                row.text(),
                List.of(),
                row.flags());
    }

    private static String phase(Column column) {
        return column.heading().replaceAll("[%\\[\\]()]|w/w|\\bg\\b", " ").strip();
    }
}
