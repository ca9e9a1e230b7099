package stillroom.formulary.material;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A book in which some cards stand for others.
 *
 * @param instead by key, the cards that go before those of the book
 */
public record CardsInstead(MaterialBook book, Map<String, Material> instead) implements MaterialBook {
    public CardsInstead {
        instead = Map.copyOf(instead);
    }

    @Override
    public Optional<Material> material(String key) {
        return Optional.ofNullable(instead.get(key)).or(() -> book.material(key));
    }

    @Override
    public Optional<Substance> substance(String key) {
        return book.substance(key);
    }

    @Override
    public List<Material> materials() {
        return book.materials().stream()
                .map(card -> instead.getOrDefault(card.key(), card))
                .toList();
    }

    @Override
    public List<Substance> substances() {
        return book.substances();
    }
}
