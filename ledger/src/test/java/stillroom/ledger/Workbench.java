package stillroom.ledger;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.store.Saved;

/** Small pieces of a workshop for tests. */
final class Workbench {
    static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private Workbench() {}

    /** A starter library of bare cards. */
    static MaterialBook starter(Material... cards) {
        Map<String, Material> byKey = new HashMap<>();
        for (Material card : cards) {
            byKey.put(card.key(), card);
        }
        return new MaterialBook() {
            @Override
            public Optional<Material> material(String key) {
                return Optional.ofNullable(byKey.get(key));
            }

            @Override
            public Optional<Substance> substance(String key) {
                return Optional.empty();
            }

            @Override
            public List<Material> materials() {
                return List.copyOf(byKey.values());
            }

            @Override
            public List<Substance> substances() {
                return List.of();
            }
        };
    }

    static MaterialBook waterAndGlycerin() {
        return starter(
                Material.named("water", "Water", Family.WATER),
                Material.named("glycerin", "Glycerin", Family.HUMECTANT));
    }

    static Ledger open(Path folder) {
        return Ledger.open(folder, Workbench::waterAndGlycerin);
    }

    static Formula formula(String glycerinPercent) {
        return new Formula(List.of(new Phase(
                "a",
                "A",
                List.of(
                        new Line("l1", "water", new Amount.ToHundred(), ""),
                        new Line("l2", "glycerin", Amount.fixed(glycerinPercent), "humectant")),
                List.of())));
    }

    static Product product(Ledger ledger) {
        return ledger.products().add("Toner", Brief.of(ProductType.TONER), "");
    }

    static FormulaVersion keptVersion(Ledger ledger) {
        long product = product(ledger).id();
        ledger.products().newVersion(product, Optional.empty(), formula("5"), "first", MORNING);
        return done(ledger.products().keep(product, 1, 1));
    }

    static Batch batch(Ledger ledger) {
        FormulaVersion version = keptVersion(ledger);
        String code = ledger.batches().proposeCode(DAY);
        return ledger.batches()
                .open(version.productId(), Optional.of(version.number()), code, DAY)
                .orElseThrow();
    }

    static Lot lot(String code, String materialKey, String grams) {
        return new Lot(
                code,
                materialKey,
                "S-" + code,
                "invented supplier",
                Grams.of(grams),
                DAY,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Lot.State.RELEASED,
                "");
    }

    static BatchEvent.Poured poured(String lot, String grams) {
        return new BatchEvent.Poured(
                "beaker",
                Optional.of("l2"),
                "glycerin",
                Optional.of(lot),
                Grams.of(grams),
                BatchEvent.Purpose.LINE,
                "bench",
                "",
                "");
    }

    static <T> T done(Saved<T> saved) {
        return saved.match(value -> value, current -> {
            throw new AssertionError("stale: " + current);
        });
    }

    static <T> T stale(Saved<T> saved) {
        return saved.match(
                value -> {
                    throw new AssertionError("saved: " + value);
                },
                current -> current);
    }

    /** Runs a statement on the file behind the ledger's back. */
    static void behindItsBack(Path folder, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("stillroom.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}
