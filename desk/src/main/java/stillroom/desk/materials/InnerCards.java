package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/**
 * Cards as constituents of another card: written {@code Card: NAME} on the form, because a card and an INCI name may
 * read alike; by the key where two cards bear one name.
 */
final class InnerCards {
    static final String MARK = "Card: ";

    private final Map<String, Material> byKey = new HashMap<>();
    private final Map<String, List<Material>> byName = new HashMap<>();

    InnerCards(MaterialBook book) {
        for (Material card : book.materials()) {
            byKey.put(card.key(), card);
            byName.computeIfAbsent(folded(card.name()), name -> new ArrayList<>())
                    .add(card);
        }
    }

    /** Whether a card is meant and nothing else. */
    static boolean isMarked(String typed) {
        return folded(typed).startsWith(folded(MARK));
    }

    /** The card that is meant: by its key, or by a name that one card alone bears. */
    Optional<Material> named(String typed) {
        String name = isMarked(typed) ? folded(typed).substring(folded(MARK).length()) : typed;
        List<Material> namesakes = byName.getOrDefault(folded(name), List.of());
        return namesakes.size() == 1 ? Optional.of(namesakes.get(0)) : Optional.ofNullable(byKey.get(name.strip()));
    }

    /** How the card is written on the form. */
    String typed(String key) {
        return MARK
                + Optional.ofNullable(byKey.get(key))
                        .map(Material::name)
                        .filter(name ->
                                byName.getOrDefault(folded(name), List.of()).size() == 1)
                        .orElse(key);
    }

    /** The name of a card, or its key where it is not in the book. */
    String name(String key) {
        return Optional.ofNullable(byKey.get(key)).map(Material::name).orElse(key);
    }

    /** Every card as it is written on the form, but for the one that is being edited. */
    List<String> choices(String butFor) {
        return byKey.keySet().stream()
                .filter(key -> !key.equals(butFor))
                .map(this::typed)
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList();
    }

    /** The substance of the constituent that stands for the card. */
    static String substance(Material card) {
        return CardsInside.MARK + card.key();
    }

    private static String folded(String name) {
        return name.strip().replaceAll("\\s+", " ").replace(": ", ":").toLowerCase(Locale.ROOT);
    }
}
