package stillroom.desk.materials;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.lot.StockedLot;

/** What stands on the shelf, by material. */
final class ShelfStock {
    /** Days ahead for which an expiry is worth a word. */
    static final int SOON_DAYS = 60;

    private final Map<String, List<StockedLot>> byMaterial;
    private final LocalDate today;

    private ShelfStock(Map<String, List<StockedLot>> byMaterial, LocalDate today) {
        this.byMaterial = byMaterial;
        this.today = today;
    }

    static ShelfStock of(LotBook lots, LocalDate today) {
        return new ShelfStock(
                lots.all().stream()
                        .filter(lot -> lot.lot().state() != Lot.State.USED_UP)
                        .collect(Collectors.groupingBy(lot -> lot.lot().materialKey())),
                today);
    }

    List<StockedLot> lots(String materialKey) {
        return byMaterial.getOrDefault(materialKey, List.of());
    }

    /** On hand over all lots that are not used up [g]. */
    Grams onHand(String materialKey) {
        return Grams.sum(lots(materialKey).stream().map(StockedLot::onHand).toList());
    }

    /** What is to be said about the lots of a material, empty when nothing is. */
    String words(String materialKey) {
        List<Lot> lots = lots(materialKey).stream().map(StockedLot::lot).toList();
        long expired = lots.stream().filter(lot -> lot.expiredOn(today)).count();
        long soon = lots.stream().filter(this::expiresSoon).count();
        long held =
                lots.stream().filter(lot -> lot.state() == Lot.State.QUARANTINE).count();
        return List.of(
                        counted(expired, "expired"),
                        counted(soon, "expiring within " + SOON_DAYS + " days"),
                        counted(held, "in quarantine"))
                .stream()
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    boolean expiresSoon(Lot lot) {
        return !lot.expiredOn(today)
                && lot.expires()
                        .map(day -> !day.isAfter(today.plusDays(SOON_DAYS)))
                        .orElse(false);
    }

    private static String counted(long lots, String what) {
        return lots == 0 ? "" : lots + (lots == 1 ? " lot " : " lots ") + what;
    }
}
