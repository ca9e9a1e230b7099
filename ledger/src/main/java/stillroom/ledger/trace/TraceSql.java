package stillroom.ledger.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Sql;
import stillroom.ledger.trace.Sources.SourceLot;

/** The questions that follow lots and batches from one to the next. Their cost grows with the answer. */
final class TraceSql {
    /** What comes out of a lot or a batch: a lot goes into batches and into lots made of it, a batch into both as well. */
    private static final String FORWARD = """
            with recursive reached (lot, batch) as (
              %s
              union select null, u.batch_id from reached r join lot_use u on u.lot_code = r.lot where u.struck = 0
              union select o.lot_code, null from reached r join lot_origin o on o.from_lot = r.lot
              union select null, s.batch_id from reached r join batch b on b.id = r.batch
                join batch_source s on s.from_code = b.code
              union select o.lot_code, null from reached r join batch b on b.id = r.batch
                join lot_origin o on o.from_code = b.code)
            select lot, batch from reached""";

    private static final String BACK = """
            with recursive source (lot, code) as (
              values (%s)
              union select u.lot_code, null from source s join batch b on b.code = s.code
                join lot_use u on u.batch_id = b.id where u.struck = 0
              union select null, x.from_code from source s join batch b on b.code = s.code
                join batch_source x on x.batch_id = b.id
              union select o.from_lot, o.from_code from source s join lot_origin o on o.lot_code = s.lot)
            select lot, code from source""";

    private TraceSql() {}

    /** A lot or a batch; the other is empty. */
    record Node(Optional<String> lot, Optional<Long> batch) {}

    static List<Node> forward(Sql sql, TraceStart start) {
        List<Object> arguments = new ArrayList<>();
        String seed = seed(start, arguments);
        return sql.list(
                FORWARD.formatted(seed),
                row -> new Node(row.maybeText("lot"), row.maybeInteger("batch")),
                arguments.toArray());
    }

    private static String seed(TraceStart start, List<Object> arguments) {
        return switch (start.kind()) {
            case LOT -> named(start, arguments, "select value, null from (%s)", false);
            case BATCH -> named(start, arguments, "select null, id from (%s) join batch on batch.code = value", false);
            case SUPPLIER ->
                named(
                        start,
                        arguments,
                        "select code, null from (%s) join lot on lower(trim(json_extract(lot.body, '$.supplier'))) = value",
                        true);
            case MATERIAL -> material(start, arguments);
            case TIME -> {
                arguments.add(start.from());
                arguments.add(start.until());
                yield "select null, batch_id from log_entry where at_ms >= ? and at_ms < ?";
            }
            case PACK_LOT, VESSEL, BALANCE, PERSON -> touched(start, arguments);
        };
    }

    private static String touched(TraceStart start, List<Object> arguments) {
        arguments.add(word(start.kind()));
        return "select null, batch_id from batch_touch where kind = ? and name in (" + values(start, arguments, true)
                + ")";
    }

    private static String material(TraceStart start, List<Object> arguments) {
        String lots = "select code, null from lot where material_key in (" + values(start, arguments, false) + ")";
        String versions = "select null, b.id from version_material m join batch b on b.product_id = m.product_id"
                + " and b.version = m.number where m.material_key in (" + values(start, arguments, false) + ")";
        return lots + " union " + versions;
    }

    private static String named(TraceStart start, List<Object> arguments, String query, boolean small) {
        return query.formatted("select value from (" + values(start, arguments, small) + ")");
    }

    private static String values(TraceStart start, List<Object> arguments, boolean small) {
        List<String> selects = new ArrayList<>();
        for (String name : start.names()) {
            selects.add("select ? as value");
            arguments.add(small ? small(name) : name);
        }
        return selects.isEmpty() ? "select null as value where 0" : String.join(" union all ", selects);
    }

    /** As names are kept that are told apart without regard to capitals; the file's own lower() knows only a to z. */
    static String small(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** The word of a kind in the table of touches. */
    static String word(TraceStart.Kind kind) {
        return switch (kind) {
            case VESSEL -> "vessel";
            case BALANCE -> "balance";
            case PERSON -> "person";
            case PACK_LOT -> "pack-lot";
            case LOT, BATCH, SUPPLIER, MATERIAL, TIME ->
                throw new IllegalArgumentException(kind + " is not kept as a touch");
        };
    }

    /** Where a trace back begins: at a batch, or at a lot. */
    static Sources back(Sql sql, String code, boolean batch) {
        List<SourceLot> lots = new ArrayList<>();
        List<String> batches = new ArrayList<>();
        String seed = batch ? "null, ?" : "?, null";
        sql.list(
                BACK.formatted(seed),
                row -> {
                    row.maybeText("lot")
                            .filter(one -> batch || !one.equals(code))
                            .ifPresent(one -> lots.add(lot(sql, one)));
                    row.maybeText("code")
                            .filter(one -> !batch || !one.equals(code))
                            .ifPresent(batches::add);
                    return true;
                },
                code);
        lots.sort(java.util.Comparator.comparing(SourceLot::code));
        return new Sources(lots, batches);
    }

    private static SourceLot lot(Sql sql, String code) {
        boolean made = sql.number("select count(*) as n from lot_origin where lot_code = ?", code) > 0;
        return sql.first("select body from lot where code = ?", row -> Json.read(row.text("body"), Lot.class), code)
                .map(lot -> new SourceLot(code, lot.materialKey(), lot.supplier(), lot.supplierLot(), !made))
                .orElseGet(() -> new SourceLot(code, "", "", "", !made));
    }
}
