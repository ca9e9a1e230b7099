package stillroom.desk.dosing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.dosing.DosingPage.Before;
import stillroom.desk.shell.Format;
import stillroom.formulary.dosing.DosedBefore;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.batch.BatchQuery;

/** What happened the last five times with this product. */
record EarlierBatches(BatchWork work) {
    private static final int TIMES = 5;
    private static final int LOOKED_THROUGH = 30;

    List<DosedBefore> dosed() {
        BatchBook book = work.desk().ledger().batches();
        BatchQuery ofProduct =
                new BatchQuery(Set.of(), Optional.of(work.product().id()), "");
        return book.page(ofProduct, 0, LOOKED_THROUGH).rows().stream()
                .filter(row -> row.batch().id() != work.batch().id())
                .map(row -> DosedBefore.of(row.batch(), book.log(row.batch().id())))
                .filter(dosed -> !dosed.isEmpty())
                .limit(TIMES)
                .flatMap(List::stream)
                .toList();
    }

    List<Before> rows() {
        return dosed().stream().map(this::row).toList();
    }

    private Before row(DosedBefore one) {
        String from = one.from().map(pH -> Format.figure(pH, 2)).orElse("?");
        String to = one.to().map(pH -> Format.figure(pH, 2)).orElse("?");
        return new Before(
                one.batchCode(),
                "/batches/" + one.batchId(),
                Format.day(one.openedOn()),
                work.cards().name(one.materialKey()),
                Format.grams(one.grams()),
                Format.figure(one.percent().value().doubleValue(), 3),
                from + " to " + to,
                Integer.toString(one.pours()));
    }
}
