package stillroom.desk.batches.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.packs.PackShelf;
import stillroom.desk.shell.Choice;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.BatchEvent.Filled;
import stillroom.formulary.batch.MeanFill;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.pack.PackCheck;
import stillroom.formulary.pack.PackLot;

/** The containers that a batch may be filled into. */
final class Packing {
    private final BatchWork work;
    private final PackShelf shelf;

    Packing(BatchWork work) {
        this.work = work;
        this.shelf = new PackShelf(work.desk());
    }

    /** Lots of containers, each with how many are left. */
    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "not booked")));
        shelf.lots()
                .list()
                .forEach(lot -> choices.add(new Choice(
                        lot.code(),
                        lot.code() + " · " + lot.pack() + " · " + shelf.onHand(lot) + " on hand"
                                + (lot.held() ? " · held back" : ""))));
        return choices;
    }

    /** What the container of a lot is called; empty where the lot is not booked. */
    String nameOf(Optional<String> packLot) {
        return packLot.flatMap(shelf.lots()::read).map(PackLot::pack).orElse("");
    }

    Optional<Pack> packOf(Optional<String> packLot) {
        return packLot.flatMap(shelf.lots()::read).flatMap(shelf::packOf);
    }

    /** The container of the last filling that was booked. */
    Optional<Pack> lastPack() {
        return work.state().fills().stream()
                .map(fill -> fill.event().packLot())
                .reduce((earlier, later) -> later)
                .flatMap(this::packOf);
    }

    /** Notes on how containers and products got on, of the lots that may be chosen. */
    List<String> compatibility() {
        return shelf.packs().list().stream()
                .filter(pack ->
                        !pack.compatibility().isBlank() && !shelf.lotsOf(pack).isEmpty())
                .map(pack -> pack.name() + ": " + pack.compatibility())
                .toList();
    }

    List<Problem> problems(Filled filled, Optional<Double> density) {
        Optional<PackLot> lot = filled.packLot().flatMap(shelf.lots()::read);
        if (filled.packLot().isPresent() && lot.isEmpty()) {
            return List.of(new Problem("packLot", "No lot of containers bears this code."));
        }
        Optional<Pack> pack = lot.flatMap(shelf::packOf);
        if (lot.isEmpty() || pack.isEmpty()) {
            return List.of();
        }
        Optional<Double> celsius = work.state().vessel(filled.vessel()).flatMap(Vessel::celsius);
        return PackCheck.problems(pack.get(), lot.get(), MeanFill.each(filled), celsius, density);
    }
}
