package stillroom.ledger.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillroom.ledger.store.LedgerException;
import stillroom.ledger.store.Sql;

/** Reads a workshop file into an empty data file, row by row. */
final class WorkshopReader {
    private final JsonFactory json;
    private final Sql sql;
    private final JsonParser in;
    private final Map<String, Table> known;
    private boolean named;
    private boolean filled;

    WorkshopReader(JsonFactory json, Sql sql, JsonParser in) {
        this.json = json;
        this.sql = sql;
        this.in = in;
        this.known = Table.all(sql).stream().collect(Collectors.toMap(Table::name, Function.identity()));
    }

    void read() throws IOException {
        expect(in.nextToken() == JsonToken.START_OBJECT);
        while (in.nextToken() == JsonToken.FIELD_NAME) {
            String name = in.currentName();
            in.nextToken();
            member(name);
        }
        expect(in.currentToken() == JsonToken.END_OBJECT && named && filled);
    }

    private static void expect(boolean sound) {
        if (!sound) {
            throw new LedgerException("The file is not a workshop that Stillroom exported.");
        }
    }

    private void member(String name) throws IOException {
        switch (name) {
            case "stillroom" -> named = in.getText().equals(WorkshopFile.KIND);
            case "format" -> format();
            case "tables" -> {
                expect(named);
                tables();
                filled = true;
            }
            default -> keep(Newer.MEMBER, name, RawJson.compact(json, in));
        }
    }

    private void format() throws IOException {
        expect(in.currentToken() == JsonToken.VALUE_NUMBER_INT);
        if (in.getLongValue() > WorkshopFile.FORMAT) {
            throw new LedgerException("The file was written by a newer version of Stillroom, in format " + in.getText()
                    + "; this one reads format " + WorkshopFile.FORMAT + ".");
        }
    }

    private void tables() throws IOException {
        expect(in.currentToken() == JsonToken.START_OBJECT);
        while (in.nextToken() == JsonToken.FIELD_NAME) {
            Table table = known.get(in.currentName());
            if (table == null) {
                String name = in.currentName();
                in.nextToken();
                keep(Newer.TABLE, name, RawJson.compact(json, in));
            } else {
                rows(table);
            }
        }
    }

    private void rows(Table table) throws IOException {
        expect(in.nextToken() == JsonToken.START_ARRAY);
        String insertion = table.insertion();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            expect(in.currentToken() == JsonToken.START_OBJECT);
            insert(table, insertion, row());
        }
    }

    /** The row as stored values; text of JSON where a member is an object or array. */
    private Map<String, Optional<Object>> row() throws IOException {
        Map<String, Optional<Object>> row = new LinkedHashMap<>();
        while (in.nextToken() == JsonToken.FIELD_NAME) {
            String name = in.currentName();
            in.nextToken();
            if (name.equals(WorkshopFile.BODY + WorkshopFile.TEXT)) {
                row.put(WorkshopFile.BODY, Optional.of(in.getText()));
            } else if (name.endsWith(WorkshopFile.BYTES) && in.currentToken() == JsonToken.VALUE_STRING) {
                String column = name.substring(0, name.length() - WorkshopFile.BYTES.length());
                row.put(column, Optional.of(Base64.getDecoder().decode(in.getText())));
            } else {
                row.put(name, value());
            }
        }
        return row;
    }

    private Optional<Object> value() throws IOException {
        return switch (in.currentToken()) {
            case VALUE_NULL -> Optional.empty();
            case VALUE_STRING -> Optional.of(in.getText());
            case VALUE_NUMBER_INT -> Optional.of(in.getLongValue());
            default -> Optional.of(RawJson.compact(json, in));
        };
    }

    private void insert(Table table, String insertion, Map<String, Optional<Object>> row) {
        List<Object> values = new ArrayList<>();
        for (String column : table.columns()) {
            Optional<Object> value = row.remove(column);
            values.add(value == null ? Optional.empty() : value);
        }
        sql.run(insertion, values.toArray());
        if (!row.isEmpty()) {
            String key = table.key().stream()
                    .map(column -> plain(values.get(table.columns().indexOf(column))))
                    .collect(Collectors.joining("/"));
            row.forEach((column, value) -> keep(Newer.COLUMN, Newer.column(table, key, column), text(value)));
        }
    }

    private static String plain(Object value) {
        return value instanceof Optional<?> optional
                ? String.valueOf(optional.map(Object::toString).orElse("null"))
                : value.toString();
    }

    /** A stored value as JSON again. */
    private String text(Optional<Object> value) {
        if (value.isEmpty()) {
            return "null";
        }
        boolean isText = value.get() instanceof String text && RawJson.changes(json, text);
        return isText
                ? '"'
                        + String.valueOf(JsonStringEncoder.getInstance()
                                .quoteAsString(value.get().toString()))
                        + '"'
                : value.get().toString();
    }

    private void keep(String kind, String key, String body) {
        sql.run("insert into document (kind, key, body) values (?, ?, ?)", kind, key, body);
    }
}
