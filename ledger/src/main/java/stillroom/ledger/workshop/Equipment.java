package stillroom.ledger.workshop;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.plan.Balance;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Sql;

/** The balances of the workshop. */
public final class Equipment {
    private final Database database;

    public Equipment(Database database) {
        this.database = database;
    }

    /** In the maker's order. */
    public List<Balance> balances() {
        return database.read(sql -> sql.list(
                "select body from balance order by position", row -> Json.read(row.text("body"), Balance.class)));
    }

    /** Replaces the whole list; names must differ. */
    public void writeBalances(List<Balance> balances) {
        if (balances.stream().map(Balance::name).distinct().count() < balances.size()) {
            throw new IllegalArgumentException("two balances have the same name");
        }
        database.write(sql -> {
            Map<String, String> before = new HashMap<>();
            sql.each("select name, body from balance", row -> before.put(row.text("name"), row.text("body")));
            sql.run("delete from balance");
            return insert(sql, balances, before);
        });
    }

    private static int insert(Sql sql, List<Balance> balances, Map<String, String> before) {
        int position = 0;
        for (Balance balance : balances) {
            position += sql.run(
                    "insert into balance (name, position, body) values (?, ?, ?)",
                    balance.name(),
                    position,
                    Json.writeOver(Optional.ofNullable(before.get(balance.name())), balance));
        }
        return position;
    }
}
