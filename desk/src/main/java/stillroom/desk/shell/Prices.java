package stillroom.desk.shell;

import java.util.Comparator;
import java.util.Optional;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Price;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockedLot;

/** What materials cost: the price on the card; where it has none, what the newest lot with a price cost. */
public final class Prices {
    private Prices() {}

    /** Prices as a judgement asks for them. */
    public static PriceBook of(Ledger ledger, MaterialBook book) {
        return key -> of(ledger, book, key);
    }

    /** The price of one material, if any is known. */
    public static Optional<Price> of(Ledger ledger, MaterialBook book, String materialKey) {
        return book.material(materialKey).flatMap(Material::price).or(() -> newestPaid(ledger, materialKey));
    }

    private static Optional<Price> newestPaid(Ledger ledger, String materialKey) {
        return ledger.lots().ofMaterial(materialKey).stream()
                .map(StockedLot::lot)
                .filter(lot -> lot.price().isPresent())
                .max(Comparator.comparing(Lot::receivedOn))
                .flatMap(Lot::price);
    }
}
