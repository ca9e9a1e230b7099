package stillroom.desk.reformulation;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Prices;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Price;
import stillroom.formulary.reformulation.Recast;
import stillroom.formulary.reformulation.Shelf;
import stillroom.ledger.lot.StockedLot;

/** The version that is to be made anew, with the shelf of today. */
record Subjected(Desk desk, Product product, FormulaVersion version, MaterialBook book) {
    private static final double PLENTY_GRAMS = 1e9;

    static Subjected of(Desk desk, Context request) {
        Product product = desk.ledger()
                .products()
                .product(Desk.id(request, "product"))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
        long number = Desk.id(request, "number");
        FormulaVersion version = desk.ledger()
                .products()
                .version(product.id(), (int) Math.max(0, Math.min(number, Integer.MAX_VALUE)))
                .orElseThrow(() -> new NotFoundResponse(product.name() + " has no version " + number + "."));
        return new Subjected(desk, product, version, desk.ledger().materials().book());
    }

    String path() {
        return "/products/" + product.id() + "/versions/" + version.number() + "/anew";
    }

    Recast recast() {
        Map<String, Optional<Price>> known = new HashMap<>();
        return new Recast(
                version.formula(),
                product.brief(),
                book,
                key -> known.computeIfAbsent(key, one -> Prices.of(desk.ledger(), book, one)),
                Judgement.evaluator(),
                desk.today());
    }

    /** Sound lots, and what the formula holds already where amounts do not matter. */
    Shelf shelf(Asked asked) {
        Map<String, Double> onHand = new HashMap<>();
        for (StockedLot stocked : desk.ledger().lots().all()) {
            Lot lot = stocked.lot();
            boolean sound =
                    lot.state() == Lot.State.RELEASED && !lot.expiredOn(desk.today()) && !lot.retestDueOn(desk.today());
            double grams = stocked.onHand().doubleValue();
            if (sound && grams > 0) {
                onHand.merge(lot.materialKey(), grams, Double::sum);
            }
        }
        // Water comes from the tap or the still: no lot in the book does not mean that there is none.
        book.materials().stream()
                .filter(card -> card.family() == Family.WATER)
                .forEach(card -> onHand.merge(card.key(), PLENTY_GRAMS, Double::sum));
        OptionalDouble batch =
                asked.batch().map(mass -> OptionalDouble.of(mass.doubleValue())).orElse(OptionalDouble.empty());
        return new Shelf(onHand, batch);
    }

    String name(String materialKey) {
        return book.material(materialKey).map(card -> card.name()).orElse(materialKey);
    }
}
