package stillroom.ledger.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.Chain;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Micrograms;
import stillroom.ledger.store.Row;
import stillroom.ledger.store.Sql;

/** The table of batches. */
final class BatchSql {
    private static final String ROWS = """
            select b.body, p.name as product_name, b.stage, b.due_ms, b.entries, b.last_ms
            from batch b join product p on p.id = b.product_id
            """;

    private BatchSql() {}

    static Optional<Batch> one(Sql sql, long id) {
        return sql.first("select body from batch where id = ?", BatchSql::batch, id);
    }

    static Optional<Batch> byCode(Sql sql, String code) {
        return sql.first("select body from batch where code = ?", BatchSql::batch, code);
    }

    static Optional<BatchRow> row(Sql sql, long id) {
        return sql.first(ROWS + "where b.id = ?", BatchSql::row, id);
    }

    /** These batches, newest first. */
    static List<BatchRow> rows(Sql sql, List<Long> ids) {
        return sql.list(
                ROWS + "where b.id in (select value from json_each(?)) order by b.id desc",
                BatchSql::row,
                ids.toString());
    }

    static long freeId(Sql sql) {
        return sql.number("select max(id) as n from batch") + 1;
    }

    static List<String> codesBeginning(Sql sql, String beginning) {
        return sql.list(
                "select code from batch where code like ? escape '\\'", row -> row.text("code"), like(beginning));
    }

    /** False where the code is taken. */
    static boolean insert(Sql sql, Batch batch) {
        return sql.run(
                        """
                        insert into batch (id, code, product_id, version, opened_on, body, stage, entries, head_hash)
                        values (?, ?, ?, ?, ?, ?, ?, 0, ?) on conflict (code) do nothing""",
                        batch.id(),
                        batch.code(),
                        batch.productId(),
                        batch.version(),
                        batch.openedOn(),
                        Json.write(batch),
                        BatchStage.PLANNED,
                        chainBeginning(Json.write(batch), versionBody(sql, batch)))
                == 1;
    }

    static void checkOrigin(Sql sql, Batch batch) {
        if (sql.number("select count(*) as n from product where id = ?", batch.productId()) == 0) {
            throw new IllegalArgumentException("there is no product " + batch.productId());
        }
        if (batch.version().isPresent() && versionBody(sql, batch).isEmpty()) {
            throw new IllegalArgumentException("version " + batch.version().get() + " of product " + batch.productId()
                    + " does not exist or is not kept");
        }
    }

    /** Recomputed from what is stored now. */
    static String chainBeginning(Sql sql, long id) {
        return sql.first(
                        "select body, product_id, version from batch where id = ?",
                        row -> chainBeginning(
                                row.text("body"),
                                versionBody(sql, row.integer("product_id"), row.maybeInteger("version"))),
                        id)
                .orElseThrow(() -> new IllegalArgumentException("there is no batch " + id));
    }

    /** What stands before the first entry: it covers the batch and the version that it is made from. */
    private static String chainBeginning(String batchBody, String versionBody) {
        return Chain.link(Chain.START, batchBody + "\n" + versionBody);
    }

    private static String versionBody(Sql sql, Batch batch) {
        return versionBody(sql, batch.productId(), batch.version().map(Integer::longValue));
    }

    private static String versionBody(Sql sql, long productId, Optional<Long> number) {
        return sql.first(
                        "select body from formula_version where product_id = ? and number = ? and kept = 1",
                        row -> row.text("body"),
                        productId,
                        number)
                .orElse("");
    }

    static List<BatchRow> unfinished(Sql sql) {
        return sql.list(ROWS + """
                where b.stage in ('PLANNED', 'IN_WORK', 'PAUSED', 'RESTING', 'FILLED', 'AWAITING', 'HELD')
                order by case when b.due_ms is null then 1 else 0 end, b.due_ms, b.id desc""", BatchSql::row);
    }

    static List<BatchRow> fromVersion(Sql sql, long productId, int number) {
        return sql.list(
                ROWS + "where b.product_id = ? and b.version = ? order by b.id desc", BatchSql::row, productId, number);
    }

    static BatchPage page(Sql sql, BatchQuery query, int offset, int size) {
        List<Object> arguments = new ArrayList<>();
        String where = where(query, arguments);
        int total = (int) sql.number("select count(*) as n from batch b " + where, arguments.toArray());
        arguments.add(size);
        arguments.add(offset);
        return new BatchPage(
                sql.list(ROWS + where + "order by b.id desc limit ? offset ?", BatchSql::row, arguments.toArray()),
                total);
    }

    private static String where(BatchQuery query, List<Object> arguments) {
        List<String> conditions = new ArrayList<>();
        if (!query.stages().isEmpty()) {
            conditions.add("b.stage in (?" + ", ?".repeat(query.stages().size() - 1) + ")");
            arguments.addAll(query.stages());
        }
        query.productId().ifPresent(id -> {
            conditions.add("b.product_id = ?");
            arguments.add(id);
        });
        if (!query.codeBegins().isEmpty()) {
            conditions.add("b.code like ? escape '\\'");
            arguments.add(like(query.codeBegins()));
        }
        return conditions.isEmpty() ? "" : "where " + String.join(" and ", conditions) + " ";
    }

    /** Net of taking back; a batch that gave all of it back is not listed. */
    static List<LotUse> holding(Sql sql, String lotCode) {
        return sql.list("""
                select b.body, p.name as product_name, b.stage, b.due_ms, b.entries, b.last_ms, u.mass_ug
                from (select batch_id, sum(mass_ug) as mass_ug from lot_use
                      where lot_code = ? and struck = 0 group by batch_id) u
                join batch b on b.id = u.batch_id
                join product p on p.id = b.product_id
                where u.mass_ug <> 0
                order by b.id desc""", row -> new LotUse(row(row), Micrograms.grams(row.integer("mass_ug"))), lotCode);
    }

    private static String like(String beginning) {
        return beginning.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
    }

    private static Batch batch(Row row) {
        return Json.read(row.text("body"), Batch.class);
    }

    private static BatchRow row(Row row) {
        return new BatchRow(
                batch(row),
                row.text("product_name"),
                BatchStage.valueOf(row.text("stage")),
                row.maybeInteger("due_ms").map(Instant::ofEpochMilli),
                (int) row.integer("entries"),
                row.maybeInteger("last_ms").map(Instant::ofEpochMilli));
    }
}
