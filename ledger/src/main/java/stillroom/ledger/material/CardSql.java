package stillroom.ledger.material;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The table of cards. */
final class CardSql {
    private CardSql() {}

    static List<Material> newestOwn(Sql sql) {
        return sql.list("""
                select c.body from card c
                where c.origin = 'own'
                  and c.revision = (select max(o.revision) from card o
                                    where o.material_key = c.material_key and o.origin = 'own')
                order by c.name, c.material_key""", CardSql::card);
    }

    static Optional<Material> newestOwn(Sql sql, String key) {
        return sql.first(
                "select body from card where material_key = ? and origin = 'own' order by revision desc limit 1",
                CardSql::card,
                key);
    }

    static Optional<Material> revision(Sql sql, String key, int revision) {
        return sql.first("select body from card where material_key = ? and revision = ?", CardSql::card, key, revision);
    }

    static List<Material> revisions(Sql sql, String key) {
        return sql.list("select body from card where material_key = ? order by revision", CardSql::card, key);
    }

    static List<Material> pinned(Sql sql, String key) {
        return sql.list(
                "select body from card where material_key = ? and origin = 'library' order by revision desc",
                CardSql::card,
                key);
    }

    static int highest(Sql sql, String key) {
        return (int) sql.number("select max(revision) as n from card where material_key = ?", key);
    }

    static void insert(Sql sql, Material card, String origin) {
        sql.run(
                """
                insert into card (material_key, revision, origin, revised_on, name, family, body)
                values (?, ?, ?, ?, ?, ?, ?)""",
                card.key(),
                card.revision(),
                origin,
                card.revisedOn(),
                card.name(),
                card.family(),
                Json.writeOver(
                        sql.body(
                                "select body from card where material_key = ? and origin = ? order by revision desc limit 1",
                                card.key(),
                                origin),
                        card));
    }

    private static Material card(Row row) {
        return Json.read(row.text("body"), Material.class);
    }
}
