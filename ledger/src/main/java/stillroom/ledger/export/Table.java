package stillroom.ledger.export;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillroom.ledger.store.Sql;

/**
 * A table of the data file as it describes itself.
 *
 * @param columns in their order
 * @param key columns of the primary key, in its order
 */
record Table(String name, List<String> columns, List<String> key) {
    /** Which migrations ran is the affair of one data file, not of the data. */
    private static final String BOOKKEEPING = "flyway";

    Table {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
    }

    /** All tables that hold the workshop's data, by name. */
    static List<Table> all(Sql sql) {
        return sql
                .list(
                        "select name from sqlite_master where type = 'table' and name not like 'sqlite_%' order by name",
                        row -> row.text("name"))
                .stream()
                .filter(name -> !name.startsWith(BOOKKEEPING))
                .map(name -> of(sql, name))
                .toList();
    }

    private static Table of(Sql sql, String name) {
        List<String> columns = new ArrayList<>();
        List<String> key = new ArrayList<>(sql.list(
                "select name from pragma_table_info(?) where pk > 0 order by pk", row -> row.text("name"), name));
        columns.addAll(sql.list("select name from pragma_table_info(?) order by cid", row -> row.text("name"), name));
        return new Table(name, columns, key);
    }

    /** All rows in the order of the key, so that equal workshops are equal files. */
    String everything() {
        return "select " + quoted(columns) + " from " + quoted(name) + " order by " + quoted(key);
    }

    String insertion() {
        String places = columns.stream().map(column -> "?").collect(Collectors.joining(", "));
        return "insert into " + quoted(name) + " (" + quoted(columns) + ") values (" + places + ")";
    }

    private static String quoted(List<String> names) {
        return names.stream().map(Table::quoted).collect(Collectors.joining(", "));
    }

    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
