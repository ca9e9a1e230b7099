package stillroom.ledger.exchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** The cards of a file over those of a library. */
record OwnBook(Map<String, Material> cards, Map<String, Substance> own, Optional<MaterialBook> library)
        implements MaterialBook {
    OwnBook {
        cards = Map.copyOf(cards);
        own = Map.copyOf(own);
    }

    @Override
    public Optional<Material> material(String key) {
        return Optional.ofNullable(cards.get(key)).or(() -> library.flatMap(book -> book.material(key)));
    }

    @Override
    public Optional<Substance> substance(String key) {
        return Optional.ofNullable(own.get(key)).or(() -> library.flatMap(book -> book.substance(key)));
    }

    @Override
    public List<Material> materials() {
        Map<String, Material> all = new LinkedHashMap<>();
        library.ifPresent(book -> book.materials().forEach(card -> all.put(card.key(), card)));
        all.putAll(cards);
        return List.copyOf(all.values());
    }

    @Override
    public List<Substance> substances() {
        Map<String, Substance> all = new LinkedHashMap<>();
        library.ifPresent(book -> book.substances().forEach(one -> all.put(one.key(), one)));
        all.putAll(own);
        return List.copyOf(all.values());
    }
}
