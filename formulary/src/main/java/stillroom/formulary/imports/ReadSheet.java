package stillroom.formulary.imports;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that was understood of a sheet.
 *
 * @param grid the sheet as it was read: turned over where that is how it was understood
 * @param columns of all tables in it, by place; where two tables share a place, that of the first
 * @param rows what each row is
 * @param mark decimal mark of its texts, where it is known
 * @param flags about the sheet as a whole
 */
public record ReadSheet(
        Grid grid,
        List<ReadFormula> formulas,
        List<ReadMaterial> materials,
        List<Column> columns,
        Map<Integer, RowKind> rows,
        Optional<Mark> mark,
        List<Flag> flags) {
    public ReadSheet {
        formulas = List.copyOf(formulas);
        materials = List.copyOf(materials);
        columns = List.copyOf(columns);
        rows = Map.copyOf(rows);
        flags = List.copyOf(flags);
    }

    public boolean isEmpty() {
        return formulas.isEmpty() && materials.isEmpty();
    }

    public int lines() {
        return materials.size()
                + formulas.stream().mapToInt(formula -> formula.lines().size()).sum();
    }

    /** How many lines may be wrong, or lie in a formula that may be. */
    public long doubtfulLines() {
        return formulas.stream()
                        .flatMap(formula -> formula.lines().stream())
                        .filter(ReadLine::isDoubtful)
                        .count()
                + materials.stream().filter(ReadMaterial::isDoubtful).count();
    }
}
