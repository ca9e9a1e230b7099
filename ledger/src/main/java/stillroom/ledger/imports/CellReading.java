package stillroom.ledger.imports;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Cell.Trait;

/** Cells of an XLSX file as they stand in it; of computed ones the value that was saved last. */
record CellReading(ReadableWorkbook book, SheetMarks marks, CellCount count) {
    /** Days are counted from here; 60 days are those of a February that never was. */
    private static final LocalDate DAY_NOUGHT = LocalDate.of(1899, 12, 30);

    private static final LocalDate DAY_NOUGHT_1904 = LocalDate.of(1904, 1, 1);

    List<Cell> row(Row row) {
        List<Cell> cells = new ArrayList<>();
        for (org.dhatim.fastexcel.reader.Cell cell : row) {
            if (cell == null || cell.getType() == CellType.EMPTY) {
                continue;
            }
            if (cell.getColumnIndex() >= Bounds.COLUMNS) {
                throw new UnreadableSheet("has more than " + Bounds.COLUMNS + " columns, which no recipe has.");
            }
            count.one();
            while (cells.size() < cell.getColumnIndex()) {
                cells.add(Cell.EMPTY);
            }
            cells.add(cell(cell, row.isHidden() || marks.hiddenColumns().contains(cell.getColumnIndex())));
        }
        return cells;
    }

    /** Far down only a slip of the hand or an attack writes anything. */
    void judgeFarRow(Row row) {
        for (org.dhatim.fastexcel.reader.Cell cell : row) {
            if (cell != null && cell.getType() != CellType.EMPTY && !text(cell).isBlank()) {
                throw new UnreadableSheet("has more than " + Bounds.ROWS + " rows, which no recipe has.");
            }
        }
    }

    private Cell cell(org.dhatim.fastexcel.reader.Cell cell, boolean hidden) {
        Set<Trait> traits = EnumSet.noneOf(Trait.class);
        String raw = text(cell);
        if (raw.isBlank() && cell.getType() != CellType.FORMULA) {
            return Cell.EMPTY;
        }
        if (hidden) {
            traits.add(Trait.HIDDEN);
        }
        if (cell.getType() == CellType.FORMULA || cell.getFormula() != null) {
            traits.add(Trait.COMPUTED);
        }
        if (raw.isBlank()) {
            traits.add(Trait.FAILED);
            return new Cell("(not computed)", Optional.empty(), traits);
        }
        if (cell.getType() == CellType.ERROR || raw.matches("#(N/A|REF!|VALUE!|DIV/0!|NAME\\?|NUM!|NULL!|SPILL!)")) {
            traits.add(Trait.FAILED);
        }
        Optional<BigDecimal> number = number(cell, raw);
        return number.isPresent() ? figure(cell, number.get(), traits) : new Cell(raw, Optional.empty(), traits);
    }

    private Cell figure(org.dhatim.fastexcel.reader.Cell cell, BigDecimal number, Set<Trait> traits) {
        String format = cell.getDataFormatString() == null ? "" : cell.getDataFormatString();
        String plain = format.replaceAll("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]", "");
        if (plain.contains("%")) {
            traits.add(Trait.SHOWN_AS_PERCENT);
        }
        if (isDay(plain)) {
            traits.add(Trait.DAY);
            return new Cell(day(number), Optional.of(number), traits);
        }
        return new Cell(number.stripTrailingZeros().toPlainString(), Optional.of(number), traits);
    }

    private static boolean isDay(String format) {
        String lower = format.toLowerCase(java.util.Locale.ROOT);
        return !lower.equals("general")
                && !lower.contains("0")
                && !lower.contains("#")
                && lower.matches(".*([dmy]|t\\.|j).*");
    }

    private String day(BigDecimal number) {
        try {
            return (book.isDate1904() ? DAY_NOUGHT_1904 : DAY_NOUGHT)
                    .plusDays(number.longValue())
                    .toString();
        } catch (DateTimeException beyond) {
            return number.toPlainString();
        }
    }

    private static Optional<BigDecimal> number(org.dhatim.fastexcel.reader.Cell cell, String raw) {
        boolean mayBe = cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA;
        boolean text = cell.getValue() instanceof String && cell.getType() != CellType.FORMULA;
        if (!mayBe || text || raw.length() > 40 || !raw.matches("[+-]?\\d*\\.?\\d+([eE][+-]?\\d{1,3})?")) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(raw));
    }

    private static String text(org.dhatim.fastexcel.reader.Cell cell) {
        String raw = cell.getType() == CellType.STRING ? cell.asString() : cell.getRawValue();
        if (raw == null) {
            raw = cell.getType() == CellType.FORMULA ? "" : String.valueOf(cell.getText());
        }
        return raw.length() > Bounds.CELL_CHARACTERS ? raw.substring(0, Bounds.CELL_CHARACTERS) : raw;
    }
}
