package stillroom.ledger.document;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Database;

/**
 * What happened to things of one kind, each under its name: added, never changed. Safe to use from many threads.
 *
 * @param <T> a record that the codec can write
 */
public final class Happenings<T> {
    private final Database database;
    private final String kind;
    private final Class<T> type;

    /** @param kind name of the row of happenings, the same for ever, in lower case with hyphens */
    public Happenings(Database database, String kind, Class<T> type) {
        this.database = database;
        this.kind = kind;
        this.type = type;
    }

    /** Adds something for good. */
    public void add(String name, Instant at, T record) {
        String body = Json.write(record);
        database.write(sql -> sql.run(
                "insert into happening (kind, name, number, at_ms, body) values (?, ?, ?, ?, ?)",
                kind,
                name,
                sql.number(
                        "select coalesce(max(number), 0) + 1 as n from happening where kind = ? and name = ?",
                        kind,
                        name),
                at,
                body));
    }

    /** What happened to one of them, oldest first. */
    public List<T> of(String name) {
        return database.read(sql -> sql.list(
                "select body from happening where kind = ? and name = ? order by number",
                row -> Json.read(row.text("body"), type),
                kind,
                name));
    }

    /** The newest of each, by name. */
    public Map<String, T> newest() {
        Map<String, T> newest = new TreeMap<>();
        database.read(sql -> sql.list(
                        "select name, body from happening where kind = ? order by name, number",
                        row -> Map.entry(row.text("name"), Json.read(row.text("body"), type)),
                        kind))
                .forEach(entry -> newest.put(entry.getKey(), entry.getValue()));
        return newest;
    }
}
