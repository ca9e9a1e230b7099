package stillroom.formulary.rule;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Strict reading of one reference table: known columns only, and each complaint names file and line. */
final class Table {
    private final String file;
    private final List<NamedCsvRecord> records;

    private Table(String file, List<NamedCsvRecord> records) {
        this.file = file;
        this.records = records;
    }

    /** A table beside this class's reference folder, such as {@code rules/eu/annex-v.csv}. */
    static Table resource(String file, List<String> columns) {
        InputStream stream = Table.class.getResourceAsStream("/reference/" + file);
        if (stream == null) {
            throw new IllegalStateException(file + ": no such reference table");
        }
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return read(file, reader, columns);
        } catch (IOException trouble) {
            throw new UncheckedIOException(file, trouble);
        }
    }

    /** A table from any text; the first line that is no remark holds exactly the columns given. */
    static Table read(String file, Reader text, List<String> columns) throws IOException {
        List<NamedCsvRecord> records = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .ofNamedCsvRecord(text)) {
            for (NamedCsvRecord line : csv) {
                if (records.isEmpty() && !line.getHeader().equals(columns)) {
                    throw new IllegalStateException(
                            file + ": columns are " + line.getHeader() + ", must be " + columns);
                }
                records.add(line);
            }
        } catch (de.siegmar.fastcsv.reader.CsvParseException trouble) {
            throw new IllegalStateException(file + ": " + trouble.getMessage(), trouble);
        }
        return new Table(file, List.copyOf(records));
    }

    /** Each line made into a value; what goes wrong says where. */
    <T> List<T> rows(Function<Row, T> maker) {
        List<T> made = new ArrayList<>();
        for (NamedCsvRecord line : records) {
            try {
                made.add(maker.apply(new Row(line)));
            } catch (RuntimeException trouble) {
                throw new IllegalStateException(
                        file + " line " + line.getStartingLineNumber() + ": " + trouble.getMessage(), trouble);
            }
        }
        return List.copyOf(made);
    }

    /** One line, read column by column. */
    record Row(NamedCsvRecord line) {
        String text(String column) {
            return line.getField(column).trim();
        }

        String needed(String column) {
            String text = text(column);
            if (text.isEmpty()) {
                throw new IllegalArgumentException(column + " is empty");
            }
            return text;
        }

        <T> Optional<T> optional(String column, Function<String, T> reading) {
            String text = text(column);
            try {
                return text.isEmpty() ? Optional.empty() : Optional.of(reading.apply(text));
            } catch (RuntimeException trouble) {
                throw new IllegalArgumentException(column + " is \"" + text + "\": " + trouble.getMessage(), trouble);
            }
        }

        List<String> words(String column, String separator) {
            String text = text(column);
            return text.isEmpty()
                    ? List.of()
                    : java.util.Arrays.stream(text.split(separator))
                            .map(String::trim)
                            .filter(word -> !word.isEmpty())
                            .toList();
        }
    }
}
