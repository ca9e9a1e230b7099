package stillroom.desk.batches.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.PremixShelf;
import stillroom.desk.batches.bench.Panel.LotChoice;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.Hold;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.material.Lot;
import stillroom.ledger.lot.StockedLot;

/** The lots that one may pour a material from: sound ones first expired first, then doubtful ones with their doubt. */
final class Lots {
    private final BatchWork work;
    private final List<StockedLot> lots;
    private final LocalDate today;

    Lots(BatchWork work, String materialKey) {
        this.work = work;
        this.today = work.desk().today();
        this.lots = work.desk().ledger().lots().ofMaterial(materialKey).stream()
                .sorted(Comparator.comparing(
                                (StockedLot lot) -> !doubt(lot.lot()).isEmpty())
                        .thenComparing(lot -> lot.onHand().signum() <= 0)
                        .thenComparing(lot -> lot.lot().expires().orElse(LocalDate.MAX))
                        .thenComparing(lot -> lot.lot().code()))
                .toList();
    }

    List<LotChoice> choices() {
        List<LotChoice> choices = new ArrayList<>();
        lots.forEach(lot -> choices.add(new LotChoice(lot.lot().code(), words(lot), doubt(lot.lot()))));
        choices.add(new LotChoice("", "Not booked: the bottle has no lot here", ""));
        return choices;
    }

    /**
     * The lot last poured for the line while it lasts, else the first sound one with stock, else the first doubtful one with
     * stock, which asks for a reason; none only where the book has none, so that no pour loses its lot by silence.
     */
    String suggested(Optional<String> lineId) {
        Optional<String> last = lineId.flatMap(this::lastPoured);
        if (last.isPresent() && lots.stream().anyMatch(lot -> lot.lot().code().equals(last.get()) && sound(lot))) {
            return last.get();
        }
        return lots.stream()
                .filter(this::sound)
                .findFirst()
                .or(() -> lots.stream().filter(this::pourable).findFirst())
                .map(lot -> lot.lot().code())
                .orElse("");
    }

    private boolean pourable(StockedLot lot) {
        return lot.lot().state() != Lot.State.USED_UP && lot.onHand().signum() > 0;
    }

    private boolean sound(StockedLot lot) {
        return doubt(lot.lot()).isEmpty() && lot.onHand().signum() > 0;
    }

    Optional<String> lastPoured(String lineId) {
        return work.state().pours().stream()
                .map(Logged::event)
                .filter(pour -> pour.lineId().filter(lineId::equals).isPresent())
                .reduce((earlier, later) -> later)
                .flatMap(Poured::lot);
    }

    private String words(StockedLot stocked) {
        Lot lot = stocked.lot();
        String stock = stocked.onHand().signum() > 0
                ? Format.grams(stocked.onHand()) + " g by the book"
                : "nothing left by the book";
        String expires = lot.expires().map(day -> " · to " + Format.day(day)).orElse("");
        String doubt = doubt(lot);
        return lot.code() + " · " + stock + expires + (doubt.isEmpty() ? "" : " · " + doubt);
    }

    /** Why a lot should not be poured without a word; empty for a sound one. */
    private String doubt(Lot lot) {
        if (lot.state() == Lot.State.QUARANTINE) {
            return "in quarantine";
        }
        if (lot.expiredOn(today)) {
            return "expired";
        }
        return new PremixShelf(work.desk())
                .standing(lot)
                .filter(Hold::over)
                .map(hold -> "premix, stood " + hold.hours() + " h of " + hold.limitHours() + " h")
                .orElse("");
    }
}
