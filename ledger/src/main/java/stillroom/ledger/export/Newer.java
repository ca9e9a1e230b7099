package stillroom.ledger.export;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/**
 * What a newer version wrote into a file and this one does not know: kept as it is among the documents, and written again.
 *
 * @param members of the file itself, by name
 * @param tables by name
 * @param columns of rows that are known, by table and key
 */
record Newer(Map<String, String> members, Map<String, String> tables, Map<String, Map<String, String>> columns) {
    static final String MEMBER = "newer-member";
    static final String TABLE = "newer-table";
    static final String COLUMN = "newer-column";

    private static final String PARTED = "\u001f";

    static Newer of(Sql sql) {
        Map<String, Map<String, String>> columns = new TreeMap<>();
        kept(sql, COLUMN).forEach((key, body) -> {
            int end = key.lastIndexOf(PARTED);
            columns.computeIfAbsent(key.substring(0, end), row -> new TreeMap<>())
                    .put(key.substring(end + 1), body);
        });
        return new Newer(kept(sql, MEMBER), kept(sql, TABLE), columns);
    }

    private static Map<String, String> kept(Sql sql, String kind) {
        Map<String, String> kept = new TreeMap<>();
        sql.list(
                        "select key, body from document where kind = ?",
                        row -> Map.entry(row.text("key"), row.text("body")),
                        kind)
                .forEach(one -> kept.put(one.getKey(), one.getValue()));
        return kept;
    }

    /** Whether a row is one of these, which are written where they came from and not among the documents. */
    static boolean isKeptIn(Table table, Row row) {
        return table.name().equals("document")
                && String.valueOf(row.value("kind")).startsWith("newer-");
    }

    Map<String, String> columns(Table table, Row row) {
        if (columns.isEmpty()) {
            return Map.of();
        }
        String key = table.key().stream()
                .map(column -> String.valueOf(row.value(column)))
                .collect(Collectors.joining("/"));
        return columns.getOrDefault(row(table, key), Map.of());
    }

    private static String row(Table table, String key) {
        return table.name() + PARTED + key;
    }

    /** Under which key an unknown column of a row is kept. */
    static String column(Table table, String key, String column) {
        return row(table, key) + PARTED + column;
    }
}
