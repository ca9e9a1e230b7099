package stillroom.ledger.imports;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Grid;

/** Texts with separated columns: comma, semicolon, tab, bar, or several blanks. */
final class TextReading {
    private static final Pattern MARKUP =
            Pattern.compile("(?is)\\s*(<!doctype html|<html|<table|<\\?xml|<\\?mso|\\{\\\\rtf).*");

    private static final Pattern LEADER =
            Pattern.compile("(\\S)[ \\t]*(?:[.·_]{4,}|(?:[.·] ){4,}|…{2,})[ \\t]*(?=\\S)");
    private static final int LEADERS = 3;

    private TextReading() {}

    static Grid read(String name, byte[] bytes) {
        Decoded decoded = Decoded.of(bytes);
        if (MARKUP.matcher(decoded.text()
                        .substring(0, Math.min(2_000, decoded.text().length())))
                .matches()) {
            throw new UnreadableSheet("is a page or a document, no table. Save it as XLSX or CSV and take that.");
        }
        List<String> remarks = new ArrayList<>(decoded.remarks());
        String text = withoutLeaders(Separator.withoutDeclaration(decoded.text()));
        Separator separator = Separator.of(text.equals(decoded.text()) ? text : withoutLeaders(decoded.text()));
        List<List<String>> records = records(text, separator, remarks);
        List<List<String>> mended = separator == Separator.COMMA ? DecimalCommas.joined(records, remarks) : records;
        return new Grid(SpreadsheetFile.stem(name), cells(mended), remarks, false);
    }

    /** "Beeswax ....... 22": rows of points lead from the name to the amount. */
    private static String withoutLeaders(String text) {
        return LEADER.matcher(text).results().limit(LEADERS).count() == LEADERS
                ? LEADER.matcher(text).replaceAll("$1\t")
                : text;
    }

    private static List<List<String>> records(String text, Separator separator, List<String> remarks) {
        if (separator == Separator.BLANKS || separator == Separator.NONE || Separator.quotes(text) % 2 == 1) {
            if (Separator.quotes(text) % 2 == 1 && text.contains("\n\"")) {
                remarks.add(
                        "A quotation mark is opened and never closed; the lines are read without regard to quotation marks.");
            }
            return plain(text, separator);
        }
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator.sign())
                .skipEmptyLines(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(text)) {
            List<List<String>> records = new ArrayList<>();
            for (CsvRecord record : reader) {
                records.add(record.getFields());
                judge(records.size(), record.getFieldCount());
            }
            return records;
        } catch (CsvParseException broken) {
            remarks.add("The quotation marks do not fit together; the lines are read without regard to them.");
            return plain(text, separator);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static List<List<String>> plain(String text, Separator separator) {
        List<List<String>> records = new ArrayList<>();
        for (String line : text.split("\\R", -1)) {
            String[] fields = line.split(separator.form(), -1);
            records.add(Arrays.asList(fields));
            judge(records.size(), fields.length);
        }
        return records;
    }

    private static void judge(int rows, int columns) {
        if (rows > Bounds.ROWS) {
            throw new UnreadableSheet("has more than " + Bounds.ROWS + " rows, which no recipe has.");
        }
        if (columns > Bounds.COLUMNS) {
            throw new UnreadableSheet("has more than " + Bounds.COLUMNS + " columns, which no recipe has.");
        }
    }

    private static List<List<Cell>> cells(List<List<String>> records) {
        List<List<Cell>> rows = new ArrayList<>();
        int last = 0;
        for (List<String> record : records) {
            List<Cell> row = record.stream().map(TextReading::cell).toList();
            rows.add(row);
            last = row.stream().allMatch(Cell::isBlank) ? last : rows.size();
        }
        return rows.subList(0, last);
    }

    private static Cell cell(String field) {
        String text = field.length() > Bounds.CELL_CHARACTERS ? field.substring(0, Bounds.CELL_CHARACTERS) : field;
        return Cell.of(text.replace("\u0000", ""));
    }
}
