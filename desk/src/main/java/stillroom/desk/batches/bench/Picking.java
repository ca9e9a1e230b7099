package stillroom.desk.batches.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.PhWords;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Material;
import stillroom.ledger.lot.StockedLot;

/** Choosing a material that no line of the plan asks for. */
final class Picking {
    private static final int LIKELY = 12;
    private final BatchWork work;
    private final String vessel;

    Picking(BatchWork work, String vessel) {
        this.work = work;
        this.vessel = vessel;
    }

    Panel.Pick forCorrection(Purpose purpose) {
        List<Way> purposes = Purposes.CORRECTIONS.stream()
                .map(one -> new Way(
                        LogWords.purpose(one),
                        work.path() + "/bench" + Wish.query(vessel, Doing.CORRECT, "purpose", one.name()),
                        one == purpose))
                .toList();
        String standing = Purposes.movesPh(purpose) ? PhWords.standing(work) : "";
        return new Panel.Pick(
                "Correct what is in " + vessel, standing, purposes, likely(purpose), all(), purpose.name());
    }

    /** Free hand: everything may come next. */
    Panel.Pick freeHand() {
        return new Panel.Pick("Add to " + vessel, "", List.of(), likely(Purpose.LINE), all(), Purpose.LINE.name());
    }

    /** Those of the formula first, then those on the shelf. */
    private List<Way> likely(Purpose purpose) {
        Set<String> keys = new LinkedHashSet<>();
        work.formula().lines().stream().map(Line::materialKey).forEach(keys::add);
        work.desk().ledger().lots().all().stream()
                .filter(stocked -> stocked.onHand().signum() > 0)
                .map(StockedLot::lot)
                .forEach(lot -> keys.add(lot.materialKey()));
        return keys.stream()
                .flatMap(key -> work.book().material(key).stream())
                .filter(card -> purpose == Purpose.LINE
                        || purpose == Purpose.CORRECTION_OTHER
                        || Purposes.serves(purpose, card))
                .limit(LIKELY)
                .map(card -> way(card, purpose))
                .toList();
    }

    private Way way(Material card, Purpose purpose) {
        return new Way(
                card.name(),
                work.path() + "/bench"
                        + Wish.query(vessel, Doing.CORRECT, "purpose", purpose.name(), "material", card.key()),
                false);
    }

    List<Panel.Group> all() {
        Map<String, List<Material>> shelves = work.book().materials().stream()
                .collect(Collectors.groupingBy(card -> Format.words(card.family()), TreeMap::new, Collectors.toList()));
        List<Panel.Group> groups = new ArrayList<>();
        shelves.forEach((shelf, cards) -> groups.add(new Panel.Group(
                shelf,
                cards.stream()
                        .sorted(Comparator.comparing(Material::name))
                        .map(card -> new Choice(card.key(), card.name()))
                        .toList())));
        return groups;
    }
}
