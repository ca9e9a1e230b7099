package stillroom.ledger.formula;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.ledger.material.MaterialShelf;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Saved;
import stillroom.ledger.store.Sql;

/** Products and the versions of their formulas. A kept version never changes again. */
public final class ProductShelf {
    private final Database database;
    private final MaterialShelf materials;

    public ProductShelf(Database database, MaterialShelf materials) {
        this.database = database;
        this.materials = materials;
    }

    /** All products by name. */
    public List<Product> products() {
        return database.read(ProductSql::all);
    }

    public Optional<Product> product(long id) {
        return database.read(sql -> ProductSql.one(sql, id));
    }

    public Product add(String name, Brief brief, String note) {
        return database.write(sql -> {
            Product product = new Product(ProductSql.freeId(sql), name, brief, note);
            ProductSql.insert(sql, product);
            return product;
        });
    }

    /** Stores a changed name, brief or note. */
    public void change(Product product) {
        if (database.write(sql -> ProductSql.update(sql, product)) != 1) {
            throw new IllegalArgumentException("there is no product " + product.id());
        }
    }

    /** All versions of a product, oldest first. */
    public List<FormulaVersion> versions(long productId) {
        return database.read(sql -> VersionSql.all(sql, productId));
    }

    public Optional<FormulaVersion> version(long productId, int number) {
        return database.read(sql -> VersionSql.one(sql, productId, number));
    }

    /** The version with the highest number. */
    public Optional<FormulaVersion> newest(long productId) {
        return database.read(sql -> VersionSql.newest(sql, productId));
    }

    /**
     * Begins a version with the next free number; a draft until it is kept.
     *
     * @throws IllegalArgumentException where there is no such product
     */
    public FormulaVersion newVersion(
            long productId, Optional<Integer> basedOn, Formula formula, String why, Instant at) {
        return database.write(sql -> {
            if (ProductSql.one(sql, productId).isEmpty()) {
                throw new IllegalArgumentException("there is no product " + productId);
            }
            int highest = VersionSql.newest(sql, productId)
                    .map(FormulaVersion::number)
                    .orElse(0);
            FormulaVersion version =
                    new FormulaVersion(productId, highest + 1, 1, false, basedOn, why, at, formula, Map.of());
            VersionSql.insert(sql, version);
            return version;
        });
    }

    /**
     * Stores a changed draft and counts its edit up.
     *
     * @param expectedEdit the edit that the maker was looking at
     * @return stale where the draft was saved from elsewhere in between, or was kept
     * @throws IllegalArgumentException where there is no such version
     */
    public Saved<FormulaVersion> saveDraft(long productId, int number, int expectedEdit, Formula formula, String why) {
        return changed(
                productId,
                number,
                before -> !before.kept() && before.edit() == expectedEdit,
                before -> edited(before, formula, why));
    }

    /**
     * Keeps a version for good and pins the card revisions that it means. Keeping a kept version changes nothing.
     *
     * @return stale where a draft was saved from elsewhere in between
     * @throws IllegalArgumentException where there is no such version
     */
    public Saved<FormulaVersion> keep(long productId, int number, int expectedEdit) {
        return changed(
                productId,
                number,
                before -> before.edit() == expectedEdit,
                before -> before.kept() ? before : kept(before, materials.pin(VersionSql.materials(before))));
    }

    /** The versions, drafts included, with a line of this material, newest first. */
    public List<VersionKey> withMaterial(String materialKey) {
        return database.read(sql -> VersionSql.withMaterial(sql, materialKey));
    }

    private Saved<FormulaVersion> changed(
            long productId, int number, Predicate<FormulaVersion> fresh, UnaryOperator<FormulaVersion> change) {
        return database.write(sql -> {
            FormulaVersion before = known(sql, productId, number);
            if (!fresh.test(before)) {
                return new Saved.Stale<>(before);
            }
            FormulaVersion after = change.apply(before);
            if (!after.equals(before)) {
                VersionSql.update(sql, after);
            }
            return new Saved.Done<>(after);
        });
    }

    private static FormulaVersion known(Sql sql, long productId, int number) {
        return VersionSql.one(sql, productId, number)
                .orElseThrow(() ->
                        new IllegalArgumentException("there is no version " + number + " of product " + productId));
    }

    private static FormulaVersion edited(FormulaVersion before, Formula formula, String why) {
        return new FormulaVersion(
                before.productId(),
                before.number(),
                before.edit() + 1,
                false,
                before.basedOn(),
                why,
                before.createdAt(),
                formula,
                before.cards());
    }

    private static FormulaVersion kept(FormulaVersion before, Map<String, Integer> cards) {
        return new FormulaVersion(
                before.productId(),
                before.number(),
                before.edit(),
                true,
                before.basedOn(),
                before.why(),
                before.createdAt(),
                before.formula(),
                cards);
    }
}
