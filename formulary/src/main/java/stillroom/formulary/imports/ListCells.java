package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reads the figures of a list of materials. */
record ListCells(ListTable table) {
    MoneyCell money(int row, ListColumn column) {
        return MoneyCell.read(table.cell(row, column), table.terms().mark());
    }

    MassCell mass(int row, ListColumn column) {
        MassCell mass = MassCell.read(table.cell(row, column), table.terms().mark());
        Optional<Unit> alone = column.meaning() == Meaning.PACK && !mass.isFigure()
                ? UnitWords.of(table.cell(row, column).text())
                        .filter(unit -> unit.grams().isPresent())
                : Optional.empty();
        return alone.isPresent()
                ? new MassCell(Optional.of(java.math.BigDecimal.ONE), alone, false, java.util.List.of())
                : mass;
    }

    /** The unit that stands in the cell, in the column of units beside it, or in the heading. */
    Optional<Unit> unit(int row, ListColumn column) {
        return mass(row, column).unit().or(() -> unitBeside(row, column)).or(column::unit);
    }

    private Optional<Unit> unitBeside(int row, ListColumn column) {
        return unitColumn(column)
                .map(units -> table.cell(row, units).text())
                .filter(text -> !text.isEmpty())
                .flatMap(text ->
                        UnitWords.of(text.toLowerCase(java.util.Locale.ROOT).startsWith("kilo") ? "kg" : text));
    }

    /** The column of units that belongs to a column of masses: the next to its right, else the only one. */
    Optional<ListColumn> unitColumn(ListColumn column) {
        List<ListColumn> units = table.columns(Meaning.UNIT);
        return units.stream()
                .filter(unit -> unit.place() > column.place())
                .min(Comparator.comparingInt(ListColumn::place))
                .filter(unit -> table.columns().stream()
                        .noneMatch(between -> between.place() > column.place()
                                && between.place() < unit.place()
                                && (between.meaning() == Meaning.STOCK
                                        || between.meaning() == Meaning.PACK
                                        || between.meaning() == Meaning.AMOUNT)))
                .or(() -> units.size() == 1 && column.unit().isEmpty() && isNextTo(units.get(0), column)
                        ? Optional.of(units.get(0))
                        : Optional.empty());
    }

    private static boolean isNextTo(ListColumn units, ListColumn column) {
        return units.place() == column.place() - 1;
    }

    /** The mass that a cell says, where a unit of mass is known [g]. */
    Optional<BigDecimal> grams(int row, ListColumn column, Optional<Unit> otherwise) {
        MassCell mass = mass(row, column);
        return mass.value()
                .flatMap(value -> unit(row, column)
                        .or(() -> otherwise)
                        .flatMap(Unit::grams)
                        .map(value::multiply));
    }

    /** Whether every figure of a column has its unit. */
    boolean isWithUnits(ListColumn column) {
        return table.rows()
                .filter(row -> mass(row, column).isFigure()
                        && mass(row, column).value().get().signum() > 0)
                .allMatch(row -> unit(row, column).isPresent());
    }

    boolean hasFigures(ListColumn column) {
        return table.rows()
                .anyMatch(row -> column.meaning() == Meaning.PRICE || column.meaning() == Meaning.VALUE
                        ? money(row, column).isFigure()
                        : mass(row, column).isFigure());
    }
}
