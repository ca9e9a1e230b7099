package stillroom.formulary.imports;

import java.util.Map;
import java.util.Optional;

/**
 * What the maker has decided about a sheet; it goes before every guess. Rows and columns are counted from 0 in the sheet
 * as it is read, turned over or not.
 *
 * @param turned whether rows and columns are to be changed over
 * @param columns meaning of columns
 * @param rows what rows are
 */
public record Guidance(
        Optional<Mark> mark,
        Optional<Unit> unit,
        Optional<Boolean> turned,
        Map<Integer, Meaning> columns,
        Map<Integer, RowKind> rows) {
    public static final Guidance NONE =
            new Guidance(Optional.empty(), Optional.empty(), Optional.empty(), Map.of(), Map.of());

    public Guidance {
        columns = Map.copyOf(columns);
        rows = Map.copyOf(rows);
    }
}
