package stillroom.formulary.material;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cards that hold other cards: a premix of premixes. A constituent {@code material:KEY} stands for the card KEY. */
public final class CardsInside {
    /** What the substance of such a constituent begins with. */
    public static final String MARK = "material:";

    private CardsInside() {}

    /** The key of the card that the substance of a constituent stands for; empty where it is a substance. */
    public static Optional<String> key(String substance) {
        return substance.startsWith(MARK) ? Optional.of(substance.substring(MARK.length())) : Optional.empty();
    }

    /** Keys of the cards that stand in the composition of this one. */
    public static List<String> keys(Material card) {
        return card.composition().stream()
                .flatMap(part -> key(part.substance()).stream())
                .distinct()
                .toList();
    }

    /**
     * The chain of keys that leads from the card through others back to itself, its own key first and last; empty where
     * there is none. The card itself need not stand in the book yet.
     */
    public static List<String> loop(Material card, MaterialBook book) {
        List<String> chain = new ArrayList<>(List.of(card.key()));
        return isLoop(keys(card), card.key(), book, chain, new LinkedHashSet<>()) ? List.copyOf(chain) : List.of();
    }

    private static boolean isLoop(
            List<String> inside, String sought, MaterialBook book, List<String> chain, Set<String> seen) {
        for (String key : inside) {
            chain.add(key);
            if (key.equals(sought)) {
                return true;
            }
            if (seen.add(key)
                    && isLoop(book.material(key).map(CardsInside::keys).orElse(List.of()), sought, book, chain, seen)) {
                return true;
            }
            chain.remove(chain.size() - 1);
        }
        return false;
    }

    /** Keys of all cards that hold the one with this key, directly or through others; its own is not among them. */
    public static Set<String> holding(String key, MaterialBook book) {
        List<Material> premixes =
                book.materials().stream().filter(card -> !keys(card).isEmpty()).toList();
        Set<String> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(key));
        while (!open.isEmpty()) {
            String inner = open.remove(open.size() - 1);
            for (Material card : premixes) {
                if (!card.key().equals(key) && keys(card).contains(inner) && found.add(card.key())) {
                    open.add(card.key());
                }
            }
        }
        return found;
    }
}
