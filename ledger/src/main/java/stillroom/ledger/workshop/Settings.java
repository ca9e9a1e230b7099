package stillroom.ledger.workshop;

import stillroom.ledger.json.Json;
import stillroom.ledger.store.Database;

/** The one record about the workshop itself. */
public final class Settings {
    private final Database database;

    public Settings(Database database) {
        this.database = database;
    }

    /** What was written last; {@link Workshop#UNNAMED} before that. */
    public Workshop read() {
        return database.read(sql -> sql.first(
                        "select body from workshop", row -> Json.read(row.text("body"), Workshop.class))
                .orElse(Workshop.UNNAMED));
    }

    public void write(Workshop workshop) {
        database.write(sql -> sql.run(
                "insert into workshop (id, body) values (1, ?) on conflict (id) do update set body = excluded.body",
                Json.writeOver(sql.body("select body from workshop where id = 1"), workshop)));
    }
}
