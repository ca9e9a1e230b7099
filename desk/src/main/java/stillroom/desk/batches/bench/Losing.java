package stillroom.desk.batches.bench;

import java.util.stream.Collectors;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Masses;
import stillroom.formulary.batch.BatchCost;
import stillroom.formulary.batch.CostFacts;
import stillroom.formulary.quantity.Money;
import stillroom.ledger.lot.StockedLot;

/** What giving a batch up would cost, from the lots really used. */
record Losing(BatchWork work) {
    String says() {
        BatchCost cost = BatchCost.of(work.state(), facts());
        String currency = work.desk().ledger().settings().read().currency();
        String unpriced = cost.unpriced().stream().map(work.cards()::name).collect(Collectors.joining(", "));
        return "In all vessels together "
                + Masses.shown(work.state().inVessels().net()) + " g would be lost: material for "
                + cost.material().shown() + " " + currency
                + (unpriced.isEmpty() ? "." : ", without the price of " + unpriced + ", which is not known.");
    }

    private CostFacts facts() {
        return new CostFacts(
                work.desk().ledger().lots().all().stream().map(StockedLot::lot).toList(),
                work.book(),
                Money.ZERO,
                0,
                Money.ZERO,
                Money.ZERO,
                Money.ZERO);
    }
}
