package stillroom.desk.materials;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** The substances of a book, looked up once: by key, and by the INCI name as people type it. */
final class Inci {
    private final MaterialBook book;
    private final InnerCards cards;
    private final List<Substance> all;
    private final Map<String, Substance> byKey = new HashMap<>();
    private final Map<String, Substance> byName = new HashMap<>();

    Inci(MaterialBook book) {
        this.book = book;
        cards = new InnerCards(book);
        all = book.substances();
        for (Substance substance : all) {
            byKey.put(substance.key(), substance);
            byName.putIfAbsent(folded(substance.inciName()), substance);
        }
    }

    Optional<Substance> substance(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** The substance with this INCI name, whatever its capitals and blanks. */
    Optional<Substance> named(String inciName) {
        return Optional.ofNullable(byName.get(folded(inciName)));
    }

    /** The cards that may stand in another one. */
    InnerCards cards() {
        return cards;
    }

    MaterialBook book() {
        return book;
    }

    /** The INCI name of a key, the name of the card where it stands for one, or the key itself where neither is known. */
    String name(String key) {
        return CardsInside.key(key)
                .map(cards::name)
                .orElseGet(() -> substance(key).map(Substance::inciName).orElse(key));
    }

    /** The name as it is written on the form of a card. */
    String typed(String key) {
        return CardsInside.key(key).map(cards::typed).orElseGet(() -> name(key));
    }

    /** The INCI names that stand for a card: what was put in on purpose, the largest share first, premixes opened. */
    String labelNames(Material card) {
        if (!CardsInside.keys(card).isEmpty()) {
            return Opened.substances(card.key(), book).shares().stream()
                    .filter(share -> share.role() == Constituent.Role.INGREDIENT)
                    .map(share -> name(share.substance()))
                    .collect(Collectors.joining(", "));
        }
        return card.composition().stream()
                .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                .sorted(Comparator.comparingDouble(
                        (Constituent part) -> -part.massFraction().nominal()))
                .map(part -> name(part.substance()))
                .collect(Collectors.joining(", "));
    }

    /** All INCI names in order. */
    List<String> names() {
        return all.stream()
                .map(Substance::inciName)
                .distinct()
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList();
    }

    private static String folded(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
