package stillroom.ledger.export;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Product;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.formula.ProductShelf;

/** The batches, and what their logs say of weighings, readings and fills; struck entries stand there, marked. */
record BatchTables(Csv csv, BatchBook book, ProductShelf products, CardNames names) {
    private static final int BATCHES_AT_ONCE = 200;

    private interface EntryReader {
        void read(BatchRow row, BatchState state, LogEntry entry);
    }

    void write() throws IOException {
        csv.table(
                "batches",
                List.of("batch", "product", "version", "opened_on", "stage", "entries", "head_hash"),
                table -> {
                    for (BatchRow row : rows()) {
                        table.writeRecord(List.of(
                                Csv.safe(row.batch().code()),
                                Csv.safe(products.product(row.batch().productId())
                                        .map(Product::name)
                                        .orElse("")),
                                Csv.plain(row.batch().version()),
                                row.batch().openedOn().toString(),
                                Csv.word(row.stage()),
                                Integer.toString(row.entries()),
                                book.headHash(row.batch().id()).orElse("")));
                    }
                });
        csv.table(
                "weighings",
                List.of(
                        "batch",
                        "entry",
                        "at",
                        "by",
                        "vessel",
                        "material",
                        "lot",
                        "grams",
                        "purpose",
                        "balance",
                        "struck"),
                table -> eachEntry((row, state, entry) -> weighing(table, row, state, entry)));
        csv.table(
                "readings",
                List.of("batch", "entry", "at", "by", "reading", "vessel", "value", "unit", "words", "struck"),
                table -> eachEntry((row, state, entry) -> reading(table, row, state, entry)));
        csv.table(
                "fills",
                List.of("batch", "entry", "at", "by", "pack", "containers", "grams", "struck"),
                table -> eachEntry((row, state, entry) -> fill(table, row, state, entry)));
    }

    private void eachEntry(EntryReader reader) {
        for (BatchRow row : rows()) {
            List<LogEntry> log = book.log(row.batch().id());
            BatchState state = BatchState.of(log);
            log.forEach(entry -> reader.read(row, state, entry));
        }
    }

    private List<BatchRow> rows() {
        List<BatchRow> rows = new ArrayList<>();
        List<BatchRow> some;
        do {
            some = book.page(BatchQuery.ALL, rows.size(), BATCHES_AT_ONCE).rows();
            rows.addAll(some);
        } while (!some.isEmpty());
        return rows;
    }

    private void weighing(CsvWriter table, BatchRow row, BatchState state, LogEntry entry) {
        if (entry.event() instanceof BatchEvent.Poured poured) {
            table.writeRecord(List.of(
                    Csv.safe(row.batch().code()),
                    Integer.toString(entry.number()),
                    entry.at().toString(),
                    Csv.safe(entry.by()),
                    Csv.safe(poured.vessel()),
                    Csv.safe(names.of(poured.materialKey())),
                    Csv.safe(poured.lot().orElse("")),
                    poured.mass().toString(),
                    Csv.word(poured.purpose()),
                    Csv.safe(poured.balance()),
                    struck(state, entry)));
        }
    }

    private static void reading(CsvWriter table, BatchRow row, BatchState state, LogEntry entry) {
        if (entry.event() instanceof BatchEvent.ReadingTaken reading) {
            table.writeRecord(List.of(
                    Csv.safe(row.batch().code()),
                    Integer.toString(entry.number()),
                    entry.at().toString(),
                    Csv.safe(entry.by()),
                    Csv.word(reading.kind()),
                    Csv.safe(reading.vessel()),
                    Csv.plain(reading.value()),
                    Csv.safe(reading.unit()),
                    Csv.safe(reading.words()),
                    struck(state, entry)));
        }
    }

    private static void fill(CsvWriter table, BatchRow row, BatchState state, LogEntry entry) {
        if (entry.event() instanceof BatchEvent.Filled filled) {
            table.writeRecord(List.of(
                    Csv.safe(row.batch().code()),
                    Integer.toString(entry.number()),
                    entry.at().toString(),
                    Csv.safe(entry.by()),
                    Csv.safe(filled.pack()),
                    Integer.toString(filled.containers()),
                    filled.total().toString(),
                    struck(state, entry)));
        }
    }

    private static String struck(BatchState state, LogEntry entry) {
        return state.struck().contains(entry.number()) ? "yes" : "no";
    }
}
