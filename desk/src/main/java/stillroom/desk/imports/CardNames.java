package stillroom.desk.imports;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.Ledger;

/** The cards of one moment: how each is named on the page, and which card a name in a sheet means. Thread-safe. */
public final class CardNames {
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, String> keys = new HashMap<>();
    private final List<String> sorted;
    private final NameIndex index;

    private CardNames(MaterialBook book, Map<String, String> remembered) {
        List<Material> cards = book.materials();
        Set<String> seen = new HashSet<>();
        Set<String> shared = new HashSet<>();
        cards.forEach(card -> {
            if (!seen.add(folded(card.name()))) {
                shared.add(folded(card.name()));
            }
        });
        for (Material card : cards) {
            String name = shared.contains(folded(card.name())) ? card.name() + " (" + card.key() + ")" : card.name();
            names.put(card.key(), name);
            keys.put(folded(name), card.key());
        }
        sorted = names.values().stream()
                .sorted(Comparator.comparing(CardNames::folded))
                .toList();
        index = NameIndex.of(book, remembered);
    }

    public static CardNames of(Ledger ledger) {
        return new CardNames(ledger.materials().book(), ledger.importNames().all());
    }

    /** The cards of a library, where there is no workshop. */
    public static CardNames of(MaterialBook book) {
        return new CardNames(book, Map.of());
    }

    private static String folded(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** How a card is named, by a name that no other card has. */
    String name(String key) {
        return names.getOrDefault(key, key);
    }

    /** The card with exactly this name or key. */
    Optional<String> key(String name) {
        String key = keys.get(folded(name));
        return key == null && names.containsKey(name.strip()) ? Optional.of(name.strip()) : Optional.ofNullable(key);
    }

    /** All names, by alphabet. */
    List<String> all() {
        return sorted;
    }

    public NameIndex index() {
        return index;
    }
}
