package stillroom.ledger.label;

import java.util.Optional;
import stillroom.formulary.label.LabelSheet;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Database;

/** What stands on labels besides the formula, one sheet for each version. Safe to use from many threads. */
public final class LabelBook {
    private final Database database;

    public LabelBook(Database database) {
        this.database = database;
    }

    /** The sheet of a version; none before the maker set one up. */
    public Optional<LabelSheet> of(long productId, int number) {
        return database.read(sql -> sql.first(
                "select body from label_sheet where product_id = ? and number = ?",
                row -> Json.read(row.text("body"), LabelSheet.class),
                productId,
                number));
    }

    /** The sheet of the newest version before this one that has any, to start from. */
    public Optional<LabelSheet> before(long productId, int number) {
        return database.read(sql -> sql.first(
                "select body from label_sheet where product_id = ? and number < ? order by number desc limit 1",
                row -> Json.read(row.text("body"), LabelSheet.class),
                productId,
                number));
    }

    public void write(long productId, int number, LabelSheet sheet) {
        database.write(sql -> {
            Optional<String> before =
                    sql.body("select body from label_sheet where product_id = ? and number = ?", productId, number);
            return sql.run("""
                    insert into label_sheet (product_id, number, body) values (?, ?, ?)
                    on conflict (product_id, number) do update set body = excluded.body""", productId, number, Json.writeOver(before, sheet));
        });
    }
}
