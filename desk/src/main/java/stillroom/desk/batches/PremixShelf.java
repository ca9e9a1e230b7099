package stillroom.desk.batches;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.ToolShed;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.Hold;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.PremixHolds;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.ledger.lot.StockedLot;

/** Since when lots of premix stand on the shelf. */
public record PremixShelf(Desk desk) {
    /** What a container of premix is called in the log of its batch, before the code of the lot. */
    public static final String PACK = "premix lot ";

    /** When each of the lots that is a premix was put on the shelf, by its code. */
    Map<String, Instant> since(List<String> codes) {
        Map<String, Instant> since = new TreeMap<>();
        codes.forEach(code -> desk.ledger()
                .lots()
                .lot(code)
                .map(StockedLot::lot)
                .flatMap(this::since)
                .ifPresent(at -> since.put(code, at)));
        return since;
    }

    private Optional<Instant> since(Lot lot) {
        boolean premix = desk.ledger()
                .drawer("premix-recipe", PremixRecipe.class)
                .read(lot.materialKey())
                .isPresent();
        return premix
                ? desk.ledger().batches().byCode(lot.supplierLot()).stream()
                        .flatMap(batch -> desk.ledger().batches().log(batch.id()).stream())
                        .filter(entry -> entry.event() instanceof BatchEvent.Filled filled
                                && filled.pack().equals(PACK + lot.code()))
                        .map(LogEntry::at)
                        .findFirst()
                : Optional.empty();
    }

    /** How long a lot has stood by now; none where it is no premix. */
    public Optional<Hold> standing(Lot lot) {
        return since(lot).map(at -> PremixHolds.stood(lot.code(), at, desk.now(), new ToolShed(desk).limits()));
    }
}
