package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The lists of materials in a sheet, and what of it is left for formulas.
 *
 * @param columns of all lists, by place
 * @param kinds what the rows of the lists are
 * @param flags about the sheet: what was taken for a list and how surely
 * @param rest the sheet with the rows of the lists emptied
 */
record ListReading(
        List<ReadMaterial> materials, List<Column> columns, Map<Integer, RowKind> kinds, List<Flag> flags, Grid rest) {

    static ListReading of(Grid grid, Terms terms) {
        List<ReadMaterial> materials = new ArrayList<>();
        List<Column> columns = new ArrayList<>();
        Map<Integer, RowKind> kinds = new HashMap<>();
        List<Flag> flags = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        for (ListTable table : new ListHeads(grid, terms).find()) {
            ListRows rows = new ListRows(table);
            ListChoice choice = ListChoosing.of(table);
            ListEvidence evidence = ListEvidence.of(table, choice, rows.totals());
            if (!evidence.isList() || rows.lines().isEmpty()) {
                if (evidence.isThin()) {
                    flags.add(Flag.doubt("This may as well be a list of materials: it is taken for a formula."));
                }
                continue;
            }
            MaterialReading reading = new MaterialReading(table, choice);
            rows.lines().forEach(line -> materials.add(reading.material(line)));
            kinds.putAll(rows.kinds());
            flags.addAll(rows.flags());
            flags.add(
                    evidence.isThin()
                            ? Flag.doubt("This may as well be a formula: it is taken for a list of materials.")
                            : Flag.note(
                                    "Taken for a list of materials, as its columns are those of a shelf and no shares."));
            table.columns().stream()
                    .filter(column -> columns.stream().noneMatch(one -> one.place() == column.place()))
                    .map(ListColumn::shown)
                    .forEach(columns::add);
            taken.addAll(rows.kinds().keySet());
        }
        columns.sort(Comparator.comparingInt(Column::place));
        return new ListReading(materials, columns, kinds, flags, emptied(grid, taken));
    }

    boolean isEmpty() {
        return materials.isEmpty();
    }

    private static Grid emptied(Grid grid, Set<Integer> taken) {
        List<List<Cell>> rows = IntStream.range(0, grid.height())
                .mapToObj(row ->
                        taken.contains(row) ? List.<Cell>of() : grid.rows().get(row))
                .toList();
        return new Grid(grid.name(), rows, grid.remarks(), grid.turned());
    }

    /** Whether anything is left that could be a formula. */
    boolean leavesFormulas() {
        return rest.rows().stream()
                        .filter(row ->
                                row.stream().filter(cell -> !cell.isBlank()).count() > 1
                                        && row.stream()
                                                .anyMatch(cell -> cell.text().matches(".*\\d.*"))
                                        && row.stream()
                                                .anyMatch(cell -> cell.text().matches(".*\\p{L}{3}.*")))
                        .count()
                > 1;
    }
}
