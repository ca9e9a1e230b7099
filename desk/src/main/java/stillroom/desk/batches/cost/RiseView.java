package stillroom.desk.batches.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchCost;
import stillroom.formulary.formula.Product;
import stillroom.formulary.quantity.Money;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;

/** What a dearer material does to each product, by the newest batch of it that was filled. */
record RiseView(Desk desk) {
    private static final int NEWEST = 50;

    CostPage.Rise page(Frame frame, Typed typed, String material, Optional<BigDecimal> percent) {
        String name = desk.ledger()
                .materials()
                .book()
                .material(material)
                .map(card -> card.name())
                .orElse("");
        List<Choice> materials = new ArrayList<>(List.of(new Choice("", "choose a material")));
        desk.ledger().lots().all().stream()
                .map(lot -> lot.lot().materialKey())
                .distinct()
                .map(key -> new Choice(
                        key,
                        desk.ledger()
                                .materials()
                                .book()
                                .material(key)
                                .map(card -> card.name())
                                .orElse(key)))
                .sorted((a, b) -> a.words().compareToIgnoreCase(b.words()))
                .forEach(materials::add);
        boolean asked = !name.isEmpty() && percent.isPresent();
        return new CostPage.Rise(
                frame,
                typed,
                materials,
                desk.ledger().settings().read().currency(),
                asked ? name + ", " + percent.get().toPlainString() + " % dearer" : "",
                asked ? products(material, percent.get()) : List.of());
    }

    private List<CostPage.Product> products(String material, BigDecimal percent) {
        List<CostPage.Product> rows = new ArrayList<>();
        for (Product product : desk.ledger().products().products()) {
            newestFilled(product.id())
                    .ifPresent(work -> row(product, work, material, percent).ifPresent(rows::add));
        }
        return rows;
    }

    private Optional<BatchWork> newestFilled(long productId) {
        return desk
                .ledger()
                .batches()
                .page(new BatchQuery(java.util.Set.of(), Optional.of(productId), ""), 0, NEWEST)
                .rows()
                .stream()
                .map(BatchRow::batch)
                .map(batch -> BatchWork.of(desk, batch.id()))
                .filter(work -> work.state().filled() > 0)
                .findFirst();
    }

    private Optional<CostPage.Product> row(Product product, BatchWork work, String material, BigDecimal percent) {
        Costing costing = new Costing(desk);
        BatchCost cost = costing.cost(work, costing.sheet(work));
        if (!cost.byMaterial().containsKey(material)) {
            return Optional.empty();
        }
        Money now = cost.perContainer().orElseThrow();
        Money more = cost.riseOf(material, percent).orElseThrow();
        String share = now.value().signum() == 0
                ? ""
                : Format.decimal(
                        more.value().movePointRight(2).divide(now.value(), java.math.MathContext.DECIMAL32), 1);
        return Optional.of(new CostPage.Product(
                product.name(),
                work.batch().code(),
                work.path() + "/cost",
                now.shown(),
                more.value().setScale(4, java.math.RoundingMode.HALF_EVEN).toPlainString(),
                now.plus(more).shown(),
                share));
    }
}
