package stillroom.ledger.material;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Substance;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The table of the maker's own substances. */
final class SubstanceSql {
    private SubstanceSql() {}

    static List<Substance> newest(Sql sql) {
        return sql.list("""
                select s.body from substance s
                where s.revision = (select max(o.revision) from substance o where o.substance_key = s.substance_key)
                order by s.inci_name, s.substance_key""", SubstanceSql::substance);
    }

    static Optional<Substance> newest(Sql sql, String key) {
        return sql.first(
                "select body from substance where substance_key = ? order by revision desc limit 1",
                SubstanceSql::substance,
                key);
    }

    static void insert(Sql sql, Substance substance) {
        long highest = sql.number("select max(revision) as n from substance where substance_key = ?", substance.key());
        sql.run(
                "insert into substance (substance_key, revision, inci_name, body) values (?, ?, ?, ?)",
                substance.key(),
                highest + 1,
                substance.inciName(),
                Json.writeOver(
                        sql.body(
                                "select body from substance where substance_key = ? order by revision desc limit 1",
                                substance.key()),
                        substance));
    }

    private static Substance substance(Row row) {
        return Json.read(row.text("body"), Substance.class);
    }
}
