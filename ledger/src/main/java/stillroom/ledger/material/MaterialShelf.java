package stillroom.ledger.material;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Saved;
import stillroom.ledger.store.Sql;

/** The maker's own cards and substances. The starter library shines through where the maker has none of the same key. */
public final class MaterialShelf {
    private final Database database;
    private final Supplier<? extends MaterialBook> starter;

    public MaterialShelf(Database database, Supplier<? extends MaterialBook> starter) {
        this.database = database;
        this.starter = starter;
    }

    /** The maker's own cards, each at its newest revision, by name. */
    public List<Material> own() {
        return database.read(CardSql::newestOwn);
    }

    /** The maker's own substances, by INCI name. */
    public List<Substance> ownSubstances() {
        return database.read(SubstanceSql::newest);
    }

    /** One stored revision, or the starter library's where that is the one. */
    public Optional<Material> card(String key, int revision) {
        return database.read(sql -> CardSql.revision(sql, key, revision))
                .or(() -> starter.get().material(key).filter(card -> card.revision() == revision));
    }

    /**
     * All stored revisions of a card, oldest first. The starter library's card is not among them unless a kept version
     * pinned it.
     */
    public List<Material> revisions(String key) {
        return database.read(sql -> CardSql.revisions(sql, key));
    }

    /**
     * Stores a new revision and gives it its number, which is above those of all revisions and of the starter library's
     * card.
     *
     * @param edited its {@code revision} is the one that the maker was looking at; 0 for a card that is new
     * @return stale where that is not the current card (or, for a new card, any card of that key exists)
     */
    public Saved<Material> save(Material edited) {
        return database.write(sql -> {
            Optional<Material> current = current(sql, edited.key());
            int expected = current.map(Material::revision).orElse(0);
            if (current.isPresent() && edited.revision() != expected) {
                return new Saved.Stale<>(current.get());
            }
            int highest = Math.max(expected, CardSql.highest(sql, edited.key()));
            Material saved = edited.withRevision(highest + 1);
            CardSql.insert(sql, saved, "own");
            return new Saved.Done<>(saved);
        });
    }

    /** Stores an own substance; an earlier one of the same key stays on file, no longer current. */
    public void save(Substance substance) {
        database.write(sql -> {
            SubstanceSql.insert(sql, substance);
            return substance;
        });
    }

    /** Everything as of now: own over starter library. A card saved later does not show in it once it was looked up. */
    public MaterialBook book() {
        return book(Map.of());
    }

    /** As {@link #book()}, but cards named here at just that revision, as a kept version means them. */
    public MaterialBook book(Map<String, Integer> cards) {
        return new ShelfBook(this, Map.copyOf(cards));
    }

    /** The cards that a version means: those of its day where it was kept, else those of now. */
    public MaterialBook book(FormulaVersion version) {
        return version.kept() ? book(version.cards()) : book();
    }

    /**
     * The revisions that these materials stand at, for keeping. A starter card is stored as it is now, so that a later
     * edition of the library changes no kept version. Materials without a card are left out.
     */
    public Map<String, Integer> pin(Set<String> keys) {
        return database.write(sql -> {
            Map<String, Integer> pinned = new HashMap<>();
            for (String key : keys) {
                revisionToPin(sql, key).ifPresent(revision -> pinned.put(key, revision));
            }
            return pinned;
        });
    }

    private Optional<Integer> revisionToPin(Sql sql, String key) {
        Optional<Material> own = CardSql.newestOwn(sql, key);
        return own.isPresent()
                ? own.map(Material::revision)
                : starter.get().material(key).map(card -> pinLibraryCard(sql, card));
    }

    private static int pinLibraryCard(Sql sql, Material card) {
        for (Material before : CardSql.pinned(sql, card.key())) {
            if (before.withRevision(card.revision()).equals(card)) {
                return before.revision();
            }
        }
        int free = Math.max(card.revision(), CardSql.highest(sql, card.key()) + 1);
        CardSql.insert(sql, card.withRevision(free), "library");
        return free;
    }

    Optional<Material> current(String key) {
        return database.read(sql -> current(sql, key));
    }

    Optional<Substance> substance(String key) {
        return database.read(sql -> SubstanceSql.newest(sql, key))
                .or(() -> starter.get().substance(key));
    }

    /** Own and starter cards, each key once, own first where both have it; by name. */
    List<Material> all() {
        Map<String, Material> cards = new HashMap<>();
        starter.get().materials().forEach(card -> cards.put(card.key(), card));
        own().forEach(card -> cards.put(card.key(), card));
        return cards.values().stream()
                .sorted(Comparator.comparing(Material::name).thenComparing(Material::key))
                .toList();
    }

    /** Own and starter substances in the same way; by INCI name. */
    List<Substance> allSubstances() {
        Map<String, Substance> substances = new HashMap<>();
        starter.get().substances().forEach(substance -> substances.put(substance.key(), substance));
        ownSubstances().forEach(substance -> substances.put(substance.key(), substance));
        return substances.values().stream()
                .sorted(Comparator.comparing(Substance::inciName).thenComparing(Substance::key))
                .toList();
    }

    private Optional<Material> current(Sql sql, String key) {
        return CardSql.newestOwn(sql, key).or(() -> starter.get().material(key));
    }
}
