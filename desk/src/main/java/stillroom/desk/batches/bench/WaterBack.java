package stillroom.desk.batches.bench;

import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.Evaporation;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.batch.WeighedBack;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Family;
import stillroom.formulary.quantity.Grams;

/** Returning the water that a vessel lost, as its last weighing showed it. */
record WaterBack(BatchWork work, String vessel) {
    /** Empty where nothing was lost, where the loss is not water alone, or where the formula has no water. */
    String address() {
        Optional<Grams> missing = work.state().weighings().stream()
                .filter(back -> back.vessel().equals(vessel))
                .reduce((earlier, later) -> later)
                .filter(this::nothingReturnedSince)
                .flatMap(WeighedBack::missing)
                .filter(grams -> grams.signum() > 0);
        boolean water = work.state()
                .vessel(vessel)
                .map(Vessel::mixture)
                .filter(mixture -> new Evaporation(work.book()).of(mixture).asWater())
                .isPresent();
        Optional<String> material = work.formula().lines().stream()
                .map(Line::materialKey)
                .filter(key -> work.book()
                        .material(key)
                        .filter(card -> card.family() == Family.WATER)
                        .isPresent())
                .findFirst();
        if (missing.isEmpty() || material.isEmpty() || !water) {
            return "";
        }
        return work.path() + "/bench"
                + Wish.query(
                        vessel,
                        Doing.CORRECT,
                        "purpose",
                        Purpose.CORRECTION_WATER.name(),
                        "material",
                        material.get(),
                        "dose",
                        missing.get().toString());
    }

    private boolean nothingReturnedSince(WeighedBack back) {
        return work.state().corrections().stream()
                .noneMatch(pour -> pour.number() > back.entry()
                        && pour.event().purpose() == Purpose.CORRECTION_WATER
                        && pour.event().vessel().equals(vessel));
    }
}
