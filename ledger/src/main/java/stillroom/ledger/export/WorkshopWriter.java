package stillroom.ledger.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/**
 * Writes the whole workshop as one JSON file, a row a line, from one consistent moment and without holding it in memory. The
 * format is documented in {@code docs/file-format.md} and {@code docs/schema/workshop-1.json}.
 */
final class WorkshopWriter {
    private final JsonFactory json = new JsonFactory();
    private final Sql sql;
    private final JsonGenerator out;
    private final Newer newer;

    private WorkshopWriter(Sql sql, OutputStream file) throws IOException {
        this.sql = sql;
        this.out = json.createGenerator(file);
        this.newer = Newer.of(sql);
    }

    static void write(Database database, OutputStream file) {
        database.read(sql -> {
            try {
                new WorkshopWriter(sql, file).write();
                return true;
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        });
    }

    private void write() throws IOException {
        out.writeStartObject();
        out.writeStringField("stillroom", WorkshopFile.KIND);
        out.writeNumberField("format", WorkshopFile.FORMAT);
        out.writeRaw("\n");
        out.writeObjectFieldStart("tables");
        for (Table table : Table.all(sql)) {
            write(table);
        }
        raw(newer.tables());
        out.writeEndObject();
        raw(newer.members());
        out.writeEndObject();
        out.writeRaw("\n");
        out.flush();
    }

    private void write(Table table) throws IOException {
        out.writeArrayFieldStart(table.name());
        sql.each(table.everything(), row -> {
            try {
                write(table, row);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        });
        out.writeEndArray();
        out.writeRaw("\n");
    }

    private void write(Table table, Row row) throws IOException {
        if (Newer.isKeptIn(table, row)) {
            return;
        }
        out.writeRaw("\n");
        out.writeStartObject();
        for (String column : table.columns()) {
            write(column, row.value(column));
        }
        raw(newer.columns(table, row));
        out.writeEndObject();
    }

    private void write(String column, @Nullable Object value) throws IOException {
        if (value instanceof byte[] bytes) {
            out.writeStringField(
                    column + WorkshopFile.BYTES, Base64.getEncoder().encodeToString(bytes));
        } else if (value instanceof Number number) {
            out.writeNumberField(column, number.longValue());
        } else if (value instanceof String text && column.equals(WorkshopFile.BODY) && !RawJson.changes(json, text)) {
            out.writeFieldName(column);
            copy(text);
        } else if (value instanceof String text) {
            out.writeStringField(column.equals(WorkshopFile.BODY) ? column + WorkshopFile.TEXT : column, text);
        } else {
            out.writeNullField(column);
        }
    }

    private void raw(Map<String, String> members) throws IOException {
        for (Map.Entry<String, String> member : members.entrySet()) {
            out.writeFieldName(member.getKey());
            copy(member.getValue());
        }
    }

    private void copy(String text) throws IOException {
        try (JsonParser in = json.createParser(text)) {
            in.nextToken();
            RawJson.copy(in, out);
        }
    }
}
