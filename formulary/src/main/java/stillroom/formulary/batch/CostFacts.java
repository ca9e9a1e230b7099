package stillroom.formulary.batch;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/**
 * What a batch's cost is reckoned from. All prices with tax or all without; which, is said where they are shown.
 *
 * @param packEach container, closure and label together
 * @param overhead of this batch
 * @param rejected share of earlier rejected batches that this one has to carry
 */
public record CostFacts(
        List<Lot> lots,
        MaterialBook book,
        Money packEach,
        int labourMinutes,
        Money labourPerHour,
        Money overhead,
        Money rejected) {
    public CostFacts {
        lots = List.copyOf(lots);
    }

    /** The price of the lot really used, else of the card; none where neither is known. */
    Optional<Price> price(String materialKey, Optional<String> lotCode) {
        return lotCode.flatMap(code ->
                        lots.stream().filter(lot -> lot.code().equals(code)).findFirst())
                .flatMap(Lot::price)
                .or(() -> book.material(materialKey).flatMap(card -> card.price()));
    }
}
