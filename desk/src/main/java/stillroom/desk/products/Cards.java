package stillroom.desk.products;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** The cards that a line may name, and which card a typed name means. Of one moment; one per request. */
final class Cards {
    private static final String WATER = "water";

    private final MaterialBook book;
    private final List<Material> all;
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, String> keys = new HashMap<>();

    private Cards(MaterialBook book) {
        this.book = book;
        this.all = book.materials().stream()
                .sorted(Comparator.comparing(Material::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
        Set<String> shared = sharedNames();
        for (Material card : all) {
            String name = shared.contains(folded(card.name())) ? card.name() + " (" + card.key() + ")" : card.name();
            names.put(card.key(), name);
            keys.putIfAbsent(folded(name), card.key());
        }
        all.forEach(card -> keys.putIfAbsent(card.key(), card.key()));
        addInciNames();
    }

    static Cards of(MaterialBook book) {
        return new Cards(book);
    }

    private Set<String> sharedNames() {
        Set<String> seen = new HashSet<>();
        return all.stream()
                .map(card -> folded(card.name()))
                .filter(name -> !seen.add(name))
                .collect(Collectors.toSet());
    }

    /** An INCI name means a card only where no other card is bought for it: the same INCI is not the same grade. */
    private void addInciNames() {
        Map<String, List<String>> boughtFor = new HashMap<>();
        for (Material card : all) {
            boughtFor
                    .computeIfAbsent(folded(mainInci(card)), name -> new ArrayList<>())
                    .add(card.key());
        }
        boughtFor.forEach((inci, cards) -> {
            if (cards.size() == 1) {
                keys.putIfAbsent(inci, cards.get(0));
            }
        });
    }

    /** INCI name of what the material is bought for: its largest part that is not water; empty where it is not known. */
    private String mainInci(Material card) {
        List<Constituent> parts = largestFirst(card.composition());
        if (parts.stream().anyMatch(part -> CardsInside.key(part.substance()).isPresent())) {
            return ""; // A premix is bought for nothing; its parts have cards of their own.
        }
        return parts.stream()
                .filter(part -> !part.substance().equals(WATER))
                .findFirst()
                .or(() -> parts.stream().findFirst())
                .map(this::inci)
                .orElse("");
    }

    private static List<Constituent> largestFirst(List<Constituent> composition) {
        return composition.stream()
                .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                .sorted(Comparator.comparingDouble(
                        (Constituent part) -> -part.massFraction().nominal()))
                .toList();
    }

    private String inci(Constituent part) {
        return book.substance(part.substance()).map(Substance::inciName).orElse(part.substance());
    }

    static String folded(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** All cards by name. */
    List<Material> all() {
        return all;
    }

    boolean has(String key) {
        return book.material(key).isPresent();
    }

    /** How a line names this card: by a name that no other card has. Where there is no card, what was typed. */
    String name(String key) {
        return names.getOrDefault(key, book.material(key).map(Material::name).orElse(key));
    }

    /** The card that a typed name means: by name, key, or INCI name where only one card is bought for that. */
    Optional<String> key(String typed) {
        return Optional.ofNullable(keys.get(folded(typed)));
    }

    /** INCI names of what was put into the material on purpose, largest first; empty where it is not known. */
    String inci(String key) {
        return largestFirst(book.material(key).map(Material::composition).orElse(List.of())).stream()
                .map(this::inci)
                .collect(Collectors.joining(", "));
    }

    /** By name, or by the INCI name of what the material is bought for; names that begin as typed come before all others. */
    private double likeness(String typed, Material card) {
        double byName = Likeness.of(typed, card.name());
        double byInci = Likeness.of(typed, mainInci(card));
        return Math.max(byName, byInci) + (folded(card.name()).startsWith(folded(typed)) ? 1 : 0);
    }

    /** Up to so many cards whose names look like what was typed, likest first. */
    List<Material> similar(String typed, int most) {
        record Ranked(Material card, double likeness) {}
        List<Ranked> ranked = new ArrayList<>();
        for (Material card : all) {
            double likeness = likeness(typed, card);
            if (likeness >= Likeness.WORTH_SHOWING) {
                ranked.add(new Ranked(card, likeness));
            }
        }
        return ranked.stream()
                .sorted(Comparator.comparingDouble((Ranked one) -> -one.likeness()))
                .limit(most)
                .map(Ranked::card)
                .toList();
    }
}
