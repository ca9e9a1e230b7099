package stillroom.formulary.imports;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Rows behind the total that closed a formula which are none of its lines: revisions, packaging, pieces made. */
final class BehindTotal {
    private BehindTotal() {}

    /** Their places: those that hold nothing where the amounts stand, and one alone that counts something. */
    static Set<Integer> of(Table table, List<Row> rows) {
        RowsAbove above = new RowsAbove();
        Set<Integer> behind = new HashSet<>();
        Set<Integer> counting = new HashSet<>();
        for (Row row : rows) {
            above.add(row);
            if (above.afterClosingTotal() && row.kind() == RowKind.NOTE) {
                boolean amount = table.columns(Meaning.AMOUNT).stream()
                        .anyMatch(column ->
                                !table.grid().cell(row.place(), column.place()).isBlank());
                (amount ? counting : behind).add(row.place());
            }
        }
        if (counting.size() == 1) {
            behind.addAll(counting);
        }
        return behind;
    }
}
