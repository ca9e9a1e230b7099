package stillroom.ledger.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Database;

/**
 * All records of one kind, each under a key. For what is read and written whole; what is searched, summed or never changed has
 * a table of its own. Safe to use from many threads.
 *
 * @param <T> a record that the codec can write
 */
public final class Drawer<T> {
    private final Database database;
    private final String kind;
    private final Class<T> type;

    /** @param kind name of the drawer, the same for ever, in lower case with hyphens */
    public Drawer(Database database, String kind, Class<T> type) {
        this.database = database;
        this.kind = kind;
        this.type = type;
    }

    public Optional<T> read(String key) {
        return database.read(sql -> sql.first(
                "select body from document where kind = ? and key = ?",
                row -> Json.read(row.text("body"), type),
                kind,
                key));
    }

    /** By key, in the order of the keys. */
    public Map<String, T> all() {
        Map<String, T> all = new LinkedHashMap<>();
        database.read(sql -> sql.list(
                        "select key, body from document where kind = ? order by key",
                        row -> Map.entry(row.text("key"), Json.read(row.text("body"), type)),
                        kind))
                .forEach(entry -> all.put(entry.getKey(), entry.getValue()));
        return all;
    }

    public List<T> list() {
        return List.copyOf(all().values());
    }

    /** Puts a record under its key; one that lay there is replaced, but for what only a newer version knows. */
    public void write(String key, T record) {
        database.write(sql -> {
            Optional<String> before = sql.body("select body from document where kind = ? and key = ?", kind, key);
            return sql.run("""
                    insert into document (kind, key, body) values (?, ?, ?)
                    on conflict (kind, key) do update set body = excluded.body""", kind, key, Json.writeOver(before, record));
        });
    }

    public void remove(String key) {
        database.write(sql -> sql.run("delete from document where kind = ? and key = ?", kind, key));
    }
}
