package stillroom.ledger.formula;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The tables of formula versions and of the materials in them. */
final class VersionSql {
    private VersionSql() {}

    static List<FormulaVersion> all(Sql sql, long productId) {
        return sql.list(
                "select body from formula_version where product_id = ? order by number",
                VersionSql::version,
                productId);
    }

    static Optional<FormulaVersion> one(Sql sql, long productId, int number) {
        return sql.first(
                "select body from formula_version where product_id = ? and number = ?",
                VersionSql::version,
                productId,
                number);
    }

    static Optional<FormulaVersion> newest(Sql sql, long productId) {
        return sql.first(
                "select body from formula_version where product_id = ? order by number desc limit 1",
                VersionSql::version,
                productId);
    }

    static List<VersionKey> withMaterial(Sql sql, String materialKey) {
        return sql.list(
                """
                select product_id, number from version_material where material_key = ?
                order by product_id desc, number desc""", row -> new VersionKey(row.integer("product_id"), (int) row.integer("number")), materialKey);
    }

    private static Optional<String> body(Sql sql, long productId, int number) {
        return sql.body("select body from formula_version where product_id = ? and number = ?", productId, number);
    }

    static void insert(Sql sql, FormulaVersion version) {
        sql.run(
                "insert into formula_version (product_id, number, edit, kept, body) values (?, ?, ?, ?, ?)",
                version.productId(),
                version.number(),
                version.edit(),
                version.kept(),
                Json.writeOver(version.basedOn().flatMap(number -> body(sql, version.productId(), number)), version));
        writeMaterials(sql, version);
    }

    static void update(Sql sql, FormulaVersion version) {
        sql.run(
                "update formula_version set edit = ?, kept = ?, body = ? where product_id = ? and number = ?",
                version.edit(),
                version.kept(),
                Json.writeOver(body(sql, version.productId(), version.number()), version),
                version.productId(),
                version.number());
        writeMaterials(sql, version);
    }

    /** The materials of all lines, each once, in a stable order. */
    static Set<String> materials(FormulaVersion version) {
        Set<String> keys = new TreeSet<>();
        for (Line line : version.formula().lines()) {
            keys.add(line.materialKey());
        }
        return keys;
    }

    private static void writeMaterials(Sql sql, FormulaVersion version) {
        sql.run(
                "delete from version_material where product_id = ? and number = ?",
                version.productId(),
                version.number());
        for (String key : materials(version)) {
            sql.run(
                    "insert into version_material (product_id, number, material_key) values (?, ?, ?)",
                    version.productId(),
                    version.number(),
                    key);
        }
    }

    private static FormulaVersion version(Row row) {
        return Json.read(row.text("body"), FormulaVersion.class);
    }
}
