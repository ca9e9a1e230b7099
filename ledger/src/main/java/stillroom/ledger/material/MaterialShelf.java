package stillroom.ledger.material;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.ledger.store.Saved;

/** The maker's own cards and substances. The starter library shines through where the maker has none of the same key. */
public final class MaterialShelf {
    /** The maker's own cards, each at its newest revision, by name. */
    public List<Material> own() {
        throw new UnsupportedOperationException();
    }

    /** The maker's own substances, by INCI name. */
    public List<Substance> ownSubstances() {
        throw new UnsupportedOperationException();
    }

    /** One stored revision, or the starter library's where that is the one. */
    public Optional<Material> card(String key, int revision) {
        throw new UnsupportedOperationException();
    }

    /** All stored revisions of a card, oldest first. The starter library's card is not among them unless a kept version pinned it. */
    public List<Material> revisions(String key) {
        throw new UnsupportedOperationException();
    }

    /**
     * Stores a new revision and gives it its number.
     *
     * @param edited its {@code revision} is the one that the maker was looking at; 0 for a card that is new
     * @return stale where a newer revision (or, for a new card, any card of that key) exists already
     */
    public Saved<Material> save(Material edited) {
        throw new UnsupportedOperationException();
    }

    /** Stores an own substance; an earlier one of the same key stays on file, no longer current. */
    public void save(Substance substance) {
        throw new UnsupportedOperationException();
    }

    /** Everything as of now: own over starter library. */
    public MaterialBook book() {
        throw new UnsupportedOperationException();
    }

    /** As {@link #book()}, but cards named here at just that revision, as a kept version means them. */
    public MaterialBook book(Map<String, Integer> cards) {
        throw new UnsupportedOperationException();
    }
}
