package stillroom.ledger.export;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.formulary.quantity.Price;

/** Writes CSV files into a folder: comma, decimal point, UTF-8 with a mark at its beginning, a head row. */
final class Csv {
    private final Path folder;
    private final List<Path> written = new ArrayList<>();

    Csv(Path folder) {
        this.folder = folder;
    }

    interface Rows {
        void into(CsvWriter table) throws IOException;
    }

    List<Path> written() {
        return List.copyOf(written);
    }

    void table(String name, List<String> head, Rows rows) throws IOException {
        Path file = folder.resolve(name + ".csv");
        try (CsvWriter table =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(Files.newBufferedWriter(file))) {
            // A byte order mark first: without it spreadsheet programs take UTF-8 for something else.
            List<String> marked = new ArrayList<>(head);
            marked.set(0, "\uFEFF" + head.get(0));
            table.writeRecord(marked);
            rows.into(table);
        }
        written.add(file);
    }

    static String plain(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Spreadsheet programs take a text that begins so for a formula and run it; an apostrophe keeps it a text. */
    static String safe(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    static String percent(double fraction) {
        return new BigDecimal(Double.toString(fraction))
                .movePointRight(2)
                .stripTrailingZeros()
                .toPlainString();
    }

    static String paid(Price price) {
        return price.paid().value().toPlainString();
    }
}
