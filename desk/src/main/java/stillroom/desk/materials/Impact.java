package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Lot;
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
 */
public record Impact(List<Touched> drafts, List<Touched> kept, List<BatchRow> plans, List<StockedLot> lots) {
    public Impact {
        drafts = List.copyOf(drafts);
        kept = List.copyOf(kept);
        plans = List.copyOf(plans);
        lots = List.copyOf(lots);
    }

    /** A version of a product's formula. */
    public record Touched(Product product, int number) {}

    static final Impact NONE = new Impact(List.of(), List.of(), List.of(), List.of());

    static Impact of(Ledger ledger, String materialKey) {
        List<Touched> drafts = new ArrayList<>();
        List<Touched> kept = new ArrayList<>();
        List<VersionKey> versions = ledger.products().withMaterial(materialKey);
        for (VersionKey key : versions) {
            Optional<Product> product = ledger.products().product(key.productId());
            Optional<FormulaVersion> version = ledger.products().version(key.productId(), key.number());
            if (product.isPresent() && version.isPresent()) {
                (version.get().kept() ? kept : drafts).add(new Touched(product.get(), key.number()));
            }
        }
        return new Impact(drafts, kept, plans(ledger, Set.copyOf(versions)), lots(ledger, materialKey));
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
        return drafts.isEmpty() && kept.isEmpty() && plans.isEmpty() && lots.isEmpty();
    }
}
