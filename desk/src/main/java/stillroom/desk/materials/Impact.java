package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.formula.VersionKey;
import stillroom.ledger.lot.StockedLot;

/**
 * What a change of a card touches.
 *
 * @param drafts formula versions that follow the newest card
 * @param kept formula versions that go on meaning the card they were kept with
 * @param plans batches that are not released or rejected yet
 * @param lots lots on the shelf
 * @param cards cards that hold this one, directly or through others
 */
public record Impact(
        List<Touched> drafts, List<Touched> kept, List<BatchRow> plans, List<StockedLot> lots, List<Material> cards) {
    public Impact {
        drafts = List.copyOf(drafts);
        kept = List.copyOf(kept);
        plans = List.copyOf(plans);
        lots = List.copyOf(lots);
        cards = List.copyOf(cards);
    }

    /** A version of a product's formula. */
    public record Touched(Product product, int number) {}

    static final Impact NONE = new Impact(List.of(), List.of(), List.of(), List.of(), List.of());

    static Impact of(Ledger ledger, String materialKey) {
        List<Touched> drafts = new ArrayList<>();
        List<Touched> kept = new ArrayList<>();
        MaterialBook book = ledger.materials().book();
        Set<String> holding = CardsInside.holding(materialKey, book);
        Set<VersionKey> versions = new LinkedHashSet<>(ledger.products().withMaterial(materialKey));
        holding.forEach(outer -> versions.addAll(ledger.products().withMaterial(outer)));
        for (VersionKey key : versions) {
            Optional<Product> product = ledger.products().product(key.productId());
            Optional<FormulaVersion> version = ledger.products().version(key.productId(), key.number());
            if (product.isPresent() && version.isPresent()) {
                (version.get().kept() ? kept : drafts).add(new Touched(product.get(), key.number()));
            }
        }
        return new Impact(drafts, kept, plans(ledger, versions), lots(ledger, materialKey), cards(holding, book));
    }

    private static List<Material> cards(Set<String> keys, MaterialBook book) {
        return keys.stream().flatMap(key -> book.material(key).stream()).toList();
    }

    private static List<BatchRow> plans(Ledger ledger, Set<VersionKey> versions) {
        return ledger.batches().unfinished().stream()
                .filter(row -> row.batch()
                        .version()
                        .map(number ->
                                versions.contains(new VersionKey(row.batch().productId(), number)))
                        .orElse(false))
                .collect(Collectors.toList());
    }

    private static List<StockedLot> lots(Ledger ledger, String materialKey) {
        return ledger.lots().ofMaterial(materialKey).stream()
                .filter(lot -> lot.lot().state() != Lot.State.USED_UP)
                .toList();
    }

    public boolean isNone() {
        return drafts.isEmpty() && kept.isEmpty() && plans.isEmpty() && lots.isEmpty() && cards.isEmpty();
    }
}
