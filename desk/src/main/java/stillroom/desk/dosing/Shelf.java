package stillroom.desk.dosing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.ledger.lot.StockedLot;

/** The acids and bases that may be poured, and their lots. */
final class Shelf {
    private final BatchWork work;
    private final Set<String> inStock = new HashSet<>();

    Shelf(BatchWork work) {
        this.work = work;
        work.desk().ledger().lots().all().stream()
                .filter(lot -> lot.onHand().signum() > 0)
                .forEach(lot -> inStock.add(lot.lot().materialKey()));
    }

    /** Those of the formula first, then those in stock, then the rest by name. */
    List<Choice> correctors() {
        return cards().stream()
                .map(card -> new Choice(
                        card.key(),
                        card.name()
                                + (card.family() == Family.ACID ? " · acid" : " · base")
                                + (inStock.contains(card.key()) ? " · in stock" : "")))
                .toList();
    }

    private List<Material> cards() {
        Set<String> inFormula = new HashSet<>();
        work.formula().lines().stream().map(Line::materialKey).forEach(inFormula::add);
        return work.book().materials().stream()
                .filter(card -> card.family() == Family.ACID || card.family() == Family.BASE)
                .sorted(Comparator.comparing((Material card) -> !inFormula.contains(card.key()))
                        .thenComparing(card -> !inStock.contains(card.key()))
                        .thenComparing(Material::name))
                .toList();
    }

    /** The first acid or base in that order; of those with a known strength. */
    Optional<String> first(Family family) {
        return cards().stream()
                .filter(card -> card.family() == family && !card.composition().isEmpty())
                .map(Material::key)
                .findFirst();
    }

    List<Choice> lots(String materialKey) {
        List<Choice> choices = new ArrayList<>();
        for (StockedLot stocked : stocked(materialKey)) {
            String doubt = sound(stocked) ? "" : " · expired, in quarantine or used up by the book";
            choices.add(new Choice(
                    stocked.lot().code(),
                    stocked.lot().code() + " · " + Format.grams(stocked.onHand()) + " g by the book" + doubt));
        }
        choices.add(new Choice("", "Not booked"));
        return choices;
    }

    /** The first sound lot, empty for none. */
    String suggestedLot(String materialKey) {
        return stocked(materialKey).stream()
                .filter(this::sound)
                .map(stocked -> stocked.lot().code())
                .findFirst()
                .orElse("");
    }

    boolean hasLot(String materialKey, String code) {
        return stocked(materialKey).stream()
                .anyMatch(stocked -> stocked.lot().code().equals(code));
    }

    private List<StockedLot> stocked(String materialKey) {
        return work.desk().ledger().lots().ofMaterial(materialKey);
    }

    private boolean sound(StockedLot stocked) {
        return stocked.lot().state() == Lot.State.RELEASED
                && !stocked.lot().expiredOn(work.desk().today())
                && stocked.onHand().signum() > 0;
    }
}
