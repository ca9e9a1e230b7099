package stillroom.ledger.formula;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Product;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The table of products. */
final class ProductSql {
    private ProductSql() {}

    static List<Product> all(Sql sql) {
        return sql.list("select body from product order by name, id", ProductSql::product);
    }

    static Optional<Product> one(Sql sql, long id) {
        return sql.first("select body from product where id = ?", ProductSql::product, id);
    }

    static long freeId(Sql sql) {
        return sql.number("select max(id) as n from product") + 1;
    }

    static void insert(Sql sql, Product product) {
        sql.run(
                "insert into product (id, name, body) values (?, ?, ?)",
                product.id(),
                product.name(),
                Json.write(product));
    }

    static int update(Sql sql, Product product) {
        return sql.run(
                "update product set name = ?, body = ? where id = ?",
                product.name(),
                Json.writeOver(sql.body("select body from product where id = ?", product.id()), product),
                product.id());
    }

    private static Product product(Row row) {
        return Json.read(row.text("body"), Product.class);
    }
}
