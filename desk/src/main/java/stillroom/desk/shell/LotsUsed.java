package stillroom.desk.shell;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.ExpectedDensity;
import stillroom.formulary.batch.MadeBook;
import stillroom.formulary.batch.MadeLot;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockedLot;

/** The cards as the lots that a batch really used are, by their certificates. */
public final class LotsUsed {
    private LotsUsed() {}

    public static MadeBook book(Ledger ledger, BatchState state, Formula formula, MaterialBook book) {
        List<MadeLot> made = AsMade.of(state, formula, book).lots();
        return MadeBook.of(made, book, lots(ledger, made));
    }

    /** What the batch should weigh per volume, without air; none where the density of anything in it is not known [g/ml]. */
    public static Optional<Double> density(Ledger ledger, BatchState state, Formula formula, MaterialBook book) {
        List<MadeLot> made = AsMade.of(state, formula, book).lots();
        return ExpectedDensity.of(made, book, lots(ledger, made));
    }

    private static List<Lot> lots(Ledger ledger, List<MadeLot> made) {
        return made.stream()
                .flatMap(lot -> lot.lot().stream())
                .distinct()
                .flatMap(code -> ledger.lots().lot(code).stream())
                .map(StockedLot::lot)
                .toList();
    }
}
