package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.quantity.Price;

/** Material cost of 100 g as added; losses, samples and packs are no part of it. */
final class Cost {
    private Cost() {}

    static Outcome<Figure> per100g(List<Item> items, PriceBook prices) {
        List<String> missing = new ArrayList<>();
        double low = 0;
        double nominal = 0;
        double high = 0;
        for (Item item : items) {
            if (item.portion().share().upper() == 0) {
                continue;
            }
            Optional<Price> price = prices.price(item.portion().materialKey());
            if (price.isEmpty()) {
                missing.add(item.name());
                continue;
            }
            double perGram = price.get().paid().value().doubleValue()
                    / price.get().amount().doubleValue();
            low += perGram * 100 * item.portion().share().lower();
            nominal += perGram * 100 * item.portion().share().nominal();
            high += perGram * 100 * item.portion().share().upper();
        }
        if (items.isEmpty()) {
            return Outcome.notKnown("there are no lines yet");
        }
        if (!missing.isEmpty()) {
            return Outcome.notKnown(
                    "no price for " + Words.list(missing.stream().distinct().toList()));
        }
        return Outcome.known(new Figure(
                "Cost per 100 g", low, nominal, high, "per 100 g", "sum of line mass times price per gram", List.of()));
    }
}
