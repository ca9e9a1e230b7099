package stillroom.ledger.seal;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.Content;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Attachments;
import stillroom.ledger.store.Sql;

/** The digests of all that a batch's log refers to without holding it, by the name of each thing. */
final class Referred {
    static final String BATCH = "batch ";
    static final String VERSION = "formula version ";
    static final String CARD = "card ";
    static final String LOT = "lot ";
    static final String LABEL = "label sheet ";
    static final String RULES = "rule table ";
    static final String DOCUMENT = "document ";

    /** What may well change about a lot after the batch: how much is left of it and where it stands. */
    private static final Set<String> LIVING = Set.of("state", "opened", "note");

    private Referred() {}

    /** As everything stands now, without the rule tables. */
    static Map<String, String> of(Sql sql, Batch batch, BatchState state) {
        Map<String, String> digests = new TreeMap<>();
        sql.first("select body from batch where id = ?", row -> row.text("body"), batch.id())
                .ifPresent(body -> digests.put(BATCH + batch.code(), digest(body)));
        batch.version().ifPresent(number -> version(sql, batch, number, digests));
        lots(state).forEach(code -> lot(sql, code).ifPresent(body -> digests.put(LOT + code, digest(body))));
        return digests;
    }

    private static void version(Sql sql, Batch batch, int number, Map<String, String> digests) {
        text(sql, "select body from formula_version where product_id = ? and number = ?", batch.productId(), number)
                .ifPresent(body -> {
                    digests.put(VERSION + number, digest(body));
                    cards(sql, body, digests);
                });
        text(sql, "select body from label_sheet where product_id = ? and number = ?", batch.productId(), number)
                .ifPresent(body -> digests.put(LABEL + number, digest(body)));
    }

    /** A version that cannot be read any more is named itself; its cards are then left out. */
    private static void cards(Sql sql, String versionBody, Map<String, String> digests) {
        FormulaVersion version;
        try {
            version = Json.read(versionBody, FormulaVersion.class);
        } catch (RuntimeException altered) {
            return;
        }
        version.cards()
                .forEach((key, revision) -> text(
                                sql, "select body from card where material_key = ? and revision = ?", key, revision)
                        .ifPresent(body -> digests.put(CARD + key + " revision " + revision, digest(body))));
    }

    private static Set<String> lots(BatchState state) {
        Set<String> codes = new TreeSet<>();
        state.inputs().stream().map(Content::lot).forEach(lot -> lot.ifPresent(codes::add));
        state.titrations().forEach(one -> one.event().lot().ifPresent(codes::add));
        return codes;
    }

    /** The lasting values of a lot: what it is, from whom, how much came, its dates, price and certificate. */
    private static Optional<String> lot(Sql sql, String code) {
        return text(sql, "select body from lot where code = ?", code).map(body -> Json.without(body, LIVING));
    }

    private static Optional<String> text(Sql sql, String query, Object... arguments) {
        return sql.first(query, row -> row.text("body"), arguments);
    }

    static String digest(String text) {
        return Attachments.digest(text.getBytes(StandardCharsets.UTF_8));
    }
}
