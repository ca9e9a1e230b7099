package stillroom.formulary.reference;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A comma-separated table with one header line; lines that begin with {@code #} are remarks.
 *
 * <p>Strict: the header must name exactly the columns asked for, in that order, and each row must fill them all.
 *
 * <p>Start-up waits for these tables, so the path of a sound table uses no lambda, stream or text concatenation: each
 * costs the virtual machine milliseconds the first time.
 */
public final class ReferenceTable {
    private static final String FOLDER = "/reference/";

    private ReferenceTable() {}

    /** The rows of a table in the jar; the path is relative to the reference folder, such as {@code materials/facts.csv}. */
    public static List<ReferenceRow> read(String path, String... columns) {
        try (InputStream stream = ReferenceTable.class.getResourceAsStream(FOLDER.concat(path))) {
            if (stream == null) {
                throw new ReferenceFault(path, 0, "the table is missing from the program");
            }
            return parse(path, new InputStreamReader(stream, StandardCharsets.UTF_8), columns);
        } catch (IOException e) {
            throw new UncheckedIOException(path + " cannot be read", e);
        }
    }

    /** The text of a table in the jar, to be kept beside what was judged by it. */
    public static String text(String path) {
        try (InputStream stream = ReferenceTable.class.getResourceAsStream(FOLDER.concat(path))) {
            if (stream == null) {
                throw new ReferenceFault(path, 0, "the table is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(path + " cannot be read", e);
        }
    }

    /** The rows of a table from any reader; the file name is for messages only. */
    public static List<ReferenceRow> parse(String file, Reader reader, String... columns) {
        List<ReferenceRow> rows = new ArrayList<>();
        Map<String, Integer> places = places(columns);
        boolean headed = false;
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(reader)) {
            for (CsvRecord record : records) {
                if (headed) {
                    rows.add(row(file, record, places));
                } else {
                    checkHeader(file, record, columns);
                    headed = true;
                }
            }
        } catch (CsvParseException e) {
            throw new ReferenceFault(file, 0, "not a sound table: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
        if (!headed) {
            throw new ReferenceFault(file, 1, "no header");
        }
        return rows;
    }

    private static ReferenceRow row(String file, CsvRecord record, Map<String, Integer> places) {
        if (record.getFieldCount() != places.size()) {
            throw new ReferenceFault(
                    file,
                    record.getStartingLineNumber(),
                    record.getFieldCount() + " fields where the header has " + places.size());
        }
        return new ReferenceRow(file, record.getStartingLineNumber(), places, record.getFields());
    }

    private static Map<String, Integer> places(String[] columns) {
        Map<String, Integer> places = new HashMap<>();
        for (int place = 0; place < columns.length; place++) {
            places.put(columns[place], place);
        }
        return places;
    }

    private static void checkHeader(String file, CsvRecord record, String[] columns) {
        long line = record.getStartingLineNumber();
        List<String> known = List.of(columns);
        for (String column : record.getFields()) {
            if (!known.contains(column)) {
                throw new ReferenceFault(file, line, "unknown column \"" + column + "\"");
            }
        }
        if (!record.getFields().equals(known)) {
            throw new ReferenceFault(file, line, "columns must be " + String.join(",", columns));
        }
    }
}
