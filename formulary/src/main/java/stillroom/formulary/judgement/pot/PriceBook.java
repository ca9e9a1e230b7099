package stillroom.formulary.judgement.pot;

import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Price;

/** What a material costs today, by card. */
@FunctionalInterface
public interface PriceBook {
    Optional<Price> price(String materialKey);

    /** Of all its prices; empty where it has no name. */
    default String currency() {
        return "";
    }

    /** The same prices, in a currency with a name. */
    default PriceBook in(String currency) {
        PriceBook prices = this;
        return new PriceBook() {
            @Override
            public Optional<Price> price(String materialKey) {
                return prices.price(materialKey);
            }

            @Override
            public String currency() {
                return currency;
            }
        };
    }

    /** The prices that stand on the cards. */
    static PriceBook ofCards(MaterialBook book) {
        return key -> book.material(key).flatMap(Material::price);
    }
}
