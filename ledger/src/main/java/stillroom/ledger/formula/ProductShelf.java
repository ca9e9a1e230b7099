package stillroom.ledger.formula;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.ledger.store.Saved;

/** Products and the versions of their formulas. A kept version never changes again. */
public final class ProductShelf {
    /** All products by name. */
    public List<Product> products() {
        throw new UnsupportedOperationException();
    }

    public Optional<Product> product(long id) {
        throw new UnsupportedOperationException();
    }

    public Product add(String name, Brief brief, String note) {
        throw new UnsupportedOperationException();
    }

    /** Stores a changed name, brief or note. */
    public void change(Product product) {
        throw new UnsupportedOperationException();
    }

    /** All versions of a product, oldest first. */
    public List<FormulaVersion> versions(long productId) {
        throw new UnsupportedOperationException();
    }

    public Optional<FormulaVersion> version(long productId, int number) {
        throw new UnsupportedOperationException();
    }

    /** The version with the highest number. */
    public Optional<FormulaVersion> newest(long productId) {
        throw new UnsupportedOperationException();
    }

    /** Begins a version with the next free number; a draft until it is kept. */
    public FormulaVersion newVersion(
            long productId, Optional<Integer> basedOn, Formula formula, String why, Instant at) {
        throw new UnsupportedOperationException();
    }

    /**
     * Stores a changed draft and counts its edit up.
     *
     * @param expectedEdit the edit that the maker was looking at
     * @return stale where the draft was saved from elsewhere in between, or was kept
     */
    public Saved<FormulaVersion> saveDraft(long productId, int number, int expectedEdit, Formula formula, String why) {
        throw new UnsupportedOperationException();
    }

    /**
     * Keeps a version for good and pins the card revisions that it means. Keeping a kept version changes nothing.
     *
     * @return stale where a draft was saved from elsewhere in between
     */
    public Saved<FormulaVersion> keep(long productId, int number, int expectedEdit) {
        throw new UnsupportedOperationException();
    }

    /** The versions, drafts included, with a line of this material, newest first. */
    public List<VersionKey> withMaterial(String materialKey) {
        throw new UnsupportedOperationException();
    }
}
