package stillroom.desk.lots;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.ledger.lot.StockedLot;

/** Lots as rows of a list. */
record LotRows(Desk desk) {
    List<LotPages.Row> of(List<StockedLot> lots) {
        Map<String, String> names = desk.ledger().materials().book().materials().stream()
                .collect(Collectors.toMap(Material::key, Material::name));
        return lots.stream()
                .map(lot -> row(
                        lot,
                        names.getOrDefault(lot.lot().materialKey(), lot.lot().materialKey())))
                .toList();
    }

    private LotPages.Row row(StockedLot stocked, String material) {
        Lot lot = stocked.lot();
        return new LotPages.Row(
                lot.code(),
                material,
                Format.grams(stocked.onHand()) + " g",
                LotWords.expiry(lot, desk.today()),
                lot.expiredOn(desk.today()) && lot.state() == Lot.State.RELEASED
                        ? "past its date"
                        : LotWords.state(lot.state()),
                lot.expiredOn(desk.today()));
    }
}
