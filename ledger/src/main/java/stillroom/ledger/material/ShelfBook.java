package stillroom.ledger.material;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** The shelf as one computation sees it: each card is looked up once, so that it does not change under the computation. */
final class ShelfBook implements MaterialBook {
    private final MaterialShelf shelf;
    private final Map<String, Integer> pinned;
    private final Map<String, Optional<Material>> cards = new ConcurrentHashMap<>();
    private final Map<String, Optional<Substance>> substances = new ConcurrentHashMap<>();

    ShelfBook(MaterialShelf shelf, Map<String, Integer> pinned) {
        this.shelf = shelf;
        this.pinned = pinned;
    }

    @Override
    public Optional<Material> material(String key) {
        return cards.computeIfAbsent(key, this::looked);
    }

    @Override
    public Optional<Substance> substance(String key) {
        return substances.computeIfAbsent(key, shelf::substance);
    }

    @Override
    public List<Material> materials() {
        return shelf.all().stream()
                .map(card -> material(card.key()).orElse(card))
                .toList();
    }

    @Override
    public List<Substance> substances() {
        return shelf.allSubstances();
    }

    private Optional<Material> looked(String key) {
        Integer revision = pinned.get(key);
        return revision == null ? shelf.current(key) : shelf.card(key, revision);
    }
}
