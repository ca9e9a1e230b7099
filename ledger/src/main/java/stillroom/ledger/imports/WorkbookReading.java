package stillroom.ledger.imports;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Grid;

/** The sheets of an XLSX file. */
final class WorkbookReading {
    private WorkbookReading() {}

    static List<Grid> read(byte[] bytes) {
        PackedParts parts = PackedParts.of(bytes);
        if (!parts.has("xl/workbook.xml")) {
            throw new UnreadableSheet(foreign(parts));
        }
        try (ReadableWorkbook book = new ReadableWorkbook(
                new ByteArrayInputStream(bytes), new ReadingOptions(parts.has("xl/styles.xml"), true))) {
            return sheets(book, parts);
        } catch (IOException | RuntimeException broken) {
            if (broken instanceof UnreadableSheet refused) {
                throw refused;
            }
            throw new UnreadableSheet("is damaged, or no XLSX file as others write it. Save it once more.");
        }
    }

    private static String foreign(PackedParts parts) {
        if (parts.has("content.xml")) {
            return "is an OpenDocument file. Save it as XLSX or CSV and take that.";
        }
        if (parts.has("word/document.xml")) {
            return "is a text document, no table. Copy the table out of it and paste it.";
        }
        return parts.has("Index/Document.iwa") || parts.has("xl/workbook.bin")
                ? "is a sheet in a form that only its own program reads. Save it as XLSX or CSV and take that."
                : "is a packed file, but no XLSX file. Unpack it and take the sheets in it.";
    }

    private static List<Grid> sheets(ReadableWorkbook book, PackedParts parts) throws IOException {
        List<Grid> grids = new ArrayList<>();
        CellCount count = new CellCount();
        SheetParts where = SheetParts.of(parts);
        for (Sheet sheet : book.getSheets().toList()) {
            if (grids.size() >= Bounds.SHEETS) {
                throw new UnreadableSheet(
                        "holds more than " + Bounds.SHEETS + " sheets. Save some of them by themselves.");
            }
            SheetMarks marks = SheetMarks.of(parts.part(where.of(sheet.getName())));
            List<List<Cell>> rows = rows(sheet, new CellReading(book, marks, count));
            List<String> remarks = sheet.getVisibility() == SheetVisibility.VISIBLE
                    ? List.of()
                    : List.of("This sheet is hidden in the file.");
            grids.add(new Grid(sheet.getName(), Merging.fill(rows, marks.merged()), remarks, false));
        }
        return grids;
    }

    private static List<List<Cell>> rows(Sheet sheet, CellReading cells) throws IOException {
        List<List<Cell>> rows = new ArrayList<>();
        int last = 0;
        try (Stream<Row> stream = sheet.openStream()) {
            for (Row row : (Iterable<Row>) stream::iterator) {
                if (row.getRowNum() > Bounds.ROWS) {
                    cells.judgeFarRow(row);
                    continue;
                }
                while (rows.size() < row.getRowNum() - 1) {
                    rows.add(List.of());
                }
                rows.add(cells.row(row));
                last = rows.get(rows.size() - 1).stream().allMatch(Cell::isBlank) ? last : rows.size();
            }
        }
        return new ArrayList<>(rows.subList(0, last));
    }
}
