package stillroom.desk.law;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.ledger.material.MaterialShelf;

/** The cards that versions mean, each read once for all versions together. Thread-safe. */
final class SweepBooks {
    private final MaterialShelf shelf;
    private final MaterialBook current;
    private final Map<Revision, Optional<Material>> pinned = new ConcurrentHashMap<>();

    private record Revision(String key, int number) {}

    SweepBooks(MaterialShelf shelf) {
        this.shelf = shelf;
        this.current = shelf.book();
    }

    /** The cards as they stand now, for a kept version those that it meant. */
    MaterialBook of(FormulaVersion version) {
        return version.kept() ? new Pinned(version.cards()) : current;
    }

    private Optional<Material> card(String key, int number) {
        return pinned.computeIfAbsent(new Revision(key, number), one -> shelf.card(one.key(), one.number()));
    }

    /** The current book, but for the cards that a kept version means. */
    private final class Pinned implements MaterialBook {
        private final Map<String, Integer> cards;

        Pinned(Map<String, Integer> cards) {
            this.cards = cards;
        }

        @Override
        public Optional<Material> material(String key) {
            Integer number = cards.get(key);
            return number == null ? current.material(key) : card(key, number);
        }

        @Override
        public Optional<Substance> substance(String key) {
            return current.substance(key);
        }

        @Override
        public List<Material> materials() {
            return current.materials().stream()
                    .map(card -> material(card.key()).orElse(card))
                    .toList();
        }

        @Override
        public List<Substance> substances() {
            return current.substances();
        }
    }
}
