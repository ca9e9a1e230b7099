package stillroom.formulary.judgement.pot;

import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Price;

/** What a material costs today, by card. */
@FunctionalInterface
public interface PriceBook {
    Optional<Price> price(String materialKey);

    /** The prices that stand on the cards. */
    static PriceBook ofCards(MaterialBook book) {
        return key -> book.material(key).flatMap(Material::price);
    }
}
