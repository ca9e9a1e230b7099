package stillroom.desk.batches.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.BatchCost;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.Content;
import stillroom.formulary.batch.CostFacts;
import stillroom.formulary.batch.CostSheet;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.material.Lot;
import stillroom.formulary.pack.PackLot;
import stillroom.formulary.quantity.Money;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.lot.StockedLot;

/** Reckons what batches cost, from the lots that they really used. */
record Costing(Desk desk) {
    private static final int NEWEST = 200;

    Drawer<CostSheet> sheets() {
        return desk.ledger().drawer("cost", CostSheet.class);
    }

    /** The sheet of a batch; before it has one, that of the newest batch of the product which has. */
    CostSheet sheet(BatchWork work) {
        return sheets().read(Long.toString(work.batch().id()))
                .orElseGet(() -> newest(work.product().id()));
    }

    private CostSheet newest(long productId) {
        return page(productId, Set.of()).stream()
                .flatMap(row -> sheets().read(Long.toString(row.batch().id())).stream())
                .findFirst()
                .orElse(CostSheet.EMPTY);
    }

    private List<BatchRow> page(long productId, Set<BatchStage> stages) {
        return desk.ledger()
                .batches()
                .page(new BatchQuery(stages, Optional.of(productId), ""), 0, NEWEST)
                .rows();
    }

    BatchCost cost(BatchWork work, CostSheet sheet) {
        Money rejected = sheet.carriesRejected() ? rejectedShare(work) : Money.ZERO;
        return BatchCost.of(
                work.state(),
                new CostFacts(
                        lots(work.state()),
                        work.book(),
                        sheet.packEach().orElseGet(() -> packEach(work.state())),
                        sheet.labourMinutes(),
                        sheet.labourPerHour(),
                        sheet.overhead(),
                        rejected));
    }

    private List<Lot> lots(BatchState state) {
        return state.inputs().stream()
                .map(Content::lot)
                .flatMap(Optional::stream)
                .distinct()
                .flatMap(code -> desk.ledger().lots().lot(code).stream())
                .map(StockedLot::lot)
                .toList();
    }

    /** Mean over the fillings, each with the price of its own lot of containers. */
    Money packEach(BatchState state) {
        Drawer<PackLot> lots = desk.ledger().drawer("pack-lot", PackLot.class);
        BigDecimal sum = BigDecimal.ZERO;
        int containers = 0;
        for (Logged<stillroom.formulary.batch.BatchEvent.Filled> fill : state.fills()) {
            containers += fill.event().containers();
            Optional<Money> each = fill.event().packLot().flatMap(lots::read).flatMap(PackLot::each);
            sum = sum.add(each.map(Money::value)
                    .orElse(BigDecimal.ZERO)
                    .multiply(BigDecimal.valueOf(fill.event().containers())));
        }
        return containers == 0
                ? Money.ZERO
                : new Money(sum.divide(BigDecimal.valueOf(containers), MathContext.DECIMAL64));
    }

    /** Material of the product's rejected and scrapped batches, shared over the containers of its good ones. */
    Money rejectedShare(BatchWork work) {
        BigDecimal lost = BigDecimal.ZERO;
        for (BatchRow row : page(work.product().id(), Set.of(BatchStage.REJECTED, BatchStage.SCRAPPED))) {
            if (row.batch().id() != work.batch().id()) {
                lost = lost.add(material(row.batch().id()).value());
            }
        }
        int own = work.state().filled();
        int good = own;
        for (BatchRow row : page(work.product().id(), Set.of(BatchStage.RELEASED, BatchStage.FILLED))) {
            if (row.batch().id() != work.batch().id()) {
                good += BatchState.of(desk.ledger().batches().log(row.batch().id()))
                        .filled();
            }
        }
        return good == 0 || own == 0
                ? Money.ZERO
                : new Money(
                        lost.multiply(BigDecimal.valueOf(own)).divide(BigDecimal.valueOf(good), MathContext.DECIMAL64));
    }

    private Money material(long batchId) {
        return cost(
                        BatchWork.of(desk, batchId),
                        new CostSheet(
                                Optional.of(Money.ZERO), 0, Money.ZERO, Money.ZERO, false, BigDecimal.ZERO, false))
                .material();
    }
}
