package stillroom.ledger.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Small papers of one kind that may change, by name, and what happened to each, which is added and never changed.
 * Thread-safe.
 *
 * @param <P> the paper
 */
public final class Papers<P> {
    private final Database database;
    private final String kind;
    private final Function<P, String> written;
    private final Function<String, P> read;

    /** @param kind its word in the file, part of the file format */
    public Papers(Database database, String kind, Function<P, String> written, Function<String, P> read) {
        this.database = database;
        this.kind = kind;
        this.written = written;
        this.read = read;
    }

    public Optional<P> get(String name) {
        return database.read(sql -> sql.first(
                "select body from paper where kind = ? and name = ?", row -> read.apply(row.text("body")), kind, name));
    }

    /** All, by name. */
    public List<P> all() {
        return database.read(sql -> sql.list(
                "select body from paper where kind = ? order by name", row -> read.apply(row.text("body")), kind));
    }

    /** Writes a paper; one of the same name is replaced. */
    public void put(String name, P paper) {
        String body = written.apply(paper);
        database.write(sql -> sql.run("""
                insert into paper (kind, name, body) values (?, ?, ?)
                on conflict (kind, name) do update set body = excluded.body""", kind, name, body));
    }

    /** Takes a paper away; what happened to it stays. */
    public void remove(String name) {
        database.write(sql -> sql.run("delete from paper where kind = ? and name = ?", kind, name));
    }

    /** Adds something that happened, for good. */
    public void happened(String name, Instant at, String body) {
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

    /** What happened to one of them, oldest first, as written. */
    public List<String> happenings(String name) {
        return database.read(sql -> sql.list(
                "select body from happening where kind = ? and name = ? order by number",
                row -> row.text("body"),
                kind,
                name));
    }
}
