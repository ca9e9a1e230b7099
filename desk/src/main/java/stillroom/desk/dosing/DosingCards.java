package stillroom.desk.dosing;

import java.util.Map;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.formulary.batch.MadeBook;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.LotCard;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.lot.StockedLot;

/**
 * The cards by which a dose is reckoned: what is in the vessel by the certificates of its lots, and the corrector by that
 * of the bottle in hand, which decides how much of it is poured next.
 *
 * @param reason why the corrector's certificate could not be applied, one sentence; empty where it could
 */
record DosingCards(MaterialBook book, String reason) {
    static DosingCards of(BatchWork work, DosingAsk ask) {
        MadeBook made = work.madeBook();
        Optional<Material> card = work.book().material(ask.corrector());
        Optional<Lot> lot = work.desk().ledger().lots().lot(ask.lot()).map(StockedLot::lot);
        if (card.isEmpty()
                || lot.filter(one -> one.materialKey().equals(ask.corrector())).isEmpty()) {
            return new DosingCards(made.book(), "");
        }
        LotCard inHand = LotCard.of(card.get(), lot.get(), work.book());
        return new DosingCards(new CardsInstead(made.book(), Map.of(ask.corrector(), inHand.card())), inHand.reason());
    }
}
