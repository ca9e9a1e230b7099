package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Understands a sheet: the formulas and lists of materials in it, with how sure each thing is. */
public final class SheetReading {
    private SheetReading() {}

    /**
     * @param guidance what the maker decided; goes before every guess
     * @param knownName whether a text is the name of a material that exists
     */
    public static ReadSheet read(Grid grid, Guidance guidance, Predicate<String> knownName) {
        Map<String, Boolean> asked = new HashMap<>();
        return remembering(LongCells.opened(grid), guidance, name -> asked.computeIfAbsent(name, knownName::test));
    }

    /** @param knownName answers the same name at once when asked again */
    private static ReadSheet remembering(Grid grid, Guidance guidance, Predicate<String> knownName) {
        Grid upright = guidance.turned().orElse(false) ? grid.turnedOver() : grid;
        ReadSheet asItStands = decided(upright, guidance, knownName);
        if (guidance.turned().isPresent()
                || longest(asItStands) > 2
                || !asItStands.materials().isEmpty()) {
            return asItStands;
        }
        ReadSheet turned = decided(grid.turnedOver(), guidance, knownName);
        return longest(turned) > longest(asItStands) && longest(turned) >= 3
                ? with(turned, Flag.doubt("The ingredients stand in a row; rows and columns were changed over."))
                : asItStands;
    }

    /** Most lines with name and amount in one formula. */
    private static long longest(ReadSheet sheet) {
        return sheet.formulas().stream()
                .mapToLong(formula -> formula.lines().stream()
                        .filter(line ->
                                line.amount().isPresent() && !line.name().isEmpty())
                        .count())
                .max()
                .orElse(0);
    }

    /** Where texts can be thousands or decimals and nothing tells which, the reading in which the sums come out counts. */
    private static ReadSheet decided(Grid grid, Guidance guidance, Predicate<String> knownName) {
        Optional<Mark> mark = MarkGuess.of(grid, guidance);
        if (mark.isPresent() || !MarkGuess.isAsked(grid)) {
            return read(grid, new Terms(guidance, mark, knownName));
        }
        ReadSheet points = read(grid, new Terms(guidance, Optional.of(Mark.POINT), knownName));
        ReadSheet commas = read(grid, new Terms(guidance, Optional.of(Mark.COMMA), knownName));
        boolean pointsFit = fits(points);
        if (pointsFit != fits(commas)) {
            ReadSheet fitting = pointsFit ? points : commas;
            return with(
                    fitting,
                    Flag.doubt("Decimals are taken to stand behind a " + (pointsFit ? Mark.POINT : Mark.COMMA).words()
                            + ", because then the sums come out."));
        }
        return read(grid, new Terms(guidance, Optional.empty(), knownName));
    }

    private static boolean fits(ReadSheet sheet) {
        return !sheet.formulas().isEmpty()
                && sheet.formulas().stream()
                        .noneMatch(formula -> formula.doubts().findAny().isPresent());
    }

    private static ReadSheet read(Grid grid, Terms terms) {
        List<ReadFormula> formulas = new ArrayList<>();
        java.util.Set<Integer> behind = new java.util.HashSet<>();
        List<ReadFormula> strays = new ArrayList<>();
        List<ReadMaterial> materials = new ArrayList<>();
        List<Column> columns = new ArrayList<>();
        Map<Integer, RowKind> kinds = new HashMap<>();
        List<Flag> flags =
                new ArrayList<>(grid.remarks().stream().map(Flag::doubt).toList());
        ListReading lists = ListReading.of(grid, terms);
        materials.addAll(lists.materials());
        columns.addAll(lists.columns());
        kinds.putAll(lists.kinds());
        flags.addAll(lists.flags());
        boolean formulasLeft = lists.isEmpty() || lists.leavesFormulas();
        for (Table table : formulasLeft ? tables(lists.rest(), terms) : List.<Table>of()) {
            List<Row> rows = new RowReading(table, terms).read();
            behind.addAll(BehindTotal.of(table, rows));
            breaks(table, terms).ifPresent(flags::add);
            rows.forEach(
                    row -> kinds.merge(row.place(), row.kind(), (one, other) -> one == RowKind.BLANK ? other : one));
            table.columns().stream()
                    .filter(column -> columns.stream().noneMatch(one -> one.place() == column.place()))
                    .forEach(columns::add);
            for (ReadFormula formula : new FormulaReading(table, rows, terms).read()) {
                (Stray.is(formula, rows, terms) ? strays : formulas).add(formula);
            }
        }
        Stray.flag(strays, formulas.isEmpty() && materials.isEmpty()).ifPresent(flags::add);
        if (formulasLeft) {
            new Unread(lists.rest(), terms, kinds, behind).flag().ifPresent(flags::add);
        }
        columns.sort(java.util.Comparator.comparingInt(Column::place));
        return new ReadSheet(grid, formulas, materials, columns, kinds, terms.mark(), flags);
    }

    private static List<Table> tables(Grid grid, Terms terms) {
        return Islands.of(grid, terms).stream()
                .flatMap(part -> new Tables(part, terms).find().stream())
                .toList();
    }

    /** Headings in the middle of a sheet without a title above may belong to the formula above. */
    private static Optional<Flag> breaks(Table table, Terms terms) {
        int head = table.heads().stream().mapToInt(row -> row).min().orElse(0);
        boolean above = java.util.stream.IntStream.range(0, head)
                .anyMatch(row -> table.grid().rows().get(row).stream()
                        .anyMatch(cell -> FigureReading.read(cell, terms.mark()).isNumber()));
        boolean untitled = table.titles().isEmpty() && table.phase().isEmpty();
        boolean alone = table.names().stream()
                .noneMatch(column -> column.guessed() && !column.heading().isEmpty());
        return above && untitled && (!alone || !terms.guidance().rows().containsKey(head))
                ? Optional.of(Flag.doubt("Row " + (head + 1)
                        + " was taken for the headings of a formula of its own, though no title stands above it."))
                : Optional.empty();
    }

    private static ReadSheet with(ReadSheet sheet, Flag flag) {
        List<Flag> flags = new ArrayList<>(sheet.flags());
        flags.add(flag);
        return new ReadSheet(
                sheet.grid(), sheet.formulas(), sheet.materials(), sheet.columns(), sheet.rows(), sheet.mark(), flags);
    }
}
