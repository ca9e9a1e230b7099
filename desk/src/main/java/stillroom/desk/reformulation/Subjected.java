package stillroom.desk.reformulation;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Prices;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Figures;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Price;
import stillroom.formulary.reformulation.FigureNames;
import stillroom.formulary.reformulation.Recast;
import stillroom.formulary.reformulation.Shelf;
import stillroom.ledger.lot.StockedLot;

/** The version that is to be made anew, with the shelf of today. */
record Subjected(Desk desk, Product product, FormulaVersion version, MaterialBook book) {
    private static final double LEAST_SHOWN = 1e-4;
    private static final double PLENTY_GRAMS = 1e9;

    static Subjected of(Desk desk, Context request) {
        Product product = desk.ledger()
                .products()
                .product(Desk.id(request, "product"))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
        long number = Desk.id(request, "number");
        FormulaVersion version = desk.ledger()
                .products()
                .version(product.id(), (int) Math.max(0, Math.min(number, Integer.MAX_VALUE)))
                .orElseThrow(() -> new NotFoundResponse(product.name() + " has no version " + number + "."));
        return new Subjected(desk, product, version, desk.ledger().materials().book());
    }

    String path() {
        return "/products/" + product.id() + "/versions/" + version.number() + "/anew";
    }

    String currency() {
        return desk.ledger().settings().read().currency();
    }

    Recast recast() {
        Map<String, Optional<Price>> known = new HashMap<>();
        PriceBook prices = key -> known.computeIfAbsent(key, one -> Prices.of(desk.ledger(), book, one));
        return new Recast(
                version.formula(), product.brief(), book, prices.in(currency()), Judgement.evaluator(), desk.today());
    }

    /** Sound lots, and what the formula holds already where amounts do not matter. */
    Shelf shelf(Asked asked) {
        Map<String, Double> onHand = new HashMap<>();
        sound().forEach(stocked ->
                onHand.merge(stocked.lot().materialKey(), stocked.onHand().doubleValue(), Double::sum));
        // Water comes from the tap or the still: no lot in the book does not mean that there is none.
        book.materials().stream()
                .filter(card -> card.family() == Family.WATER)
                .forEach(card -> onHand.merge(card.key(), PLENTY_GRAMS, Double::sum));
        asked.bought().stream()
                .filter(key -> book.material(key).isPresent())
                .forEach(key -> onHand.put(key, PLENTY_GRAMS));
        OptionalDouble batch =
                asked.batch().map(mass -> OptionalDouble.of(mass.doubleValue())).orElse(OptionalDouble.empty());
        return new Shelf(onHand, batch);
    }

    private List<StockedLot> sound() {
        return desk.ledger().lots().all().stream()
                .filter(stocked -> isSound(stocked.lot()) && stocked.onHand().doubleValue() > 0)
                .toList();
    }

    private boolean isSound(Lot lot) {
        return lot.state() == Lot.State.RELEASED && !lot.expiredOn(desk.today()) && !lot.retestDueOn(desk.today());
    }

    /** Materials that may move, of the shelves that this formula uses, of which a sound lot expires by a day; not water. */
    Set<String> expiringBy(LocalDate day) {
        Set<Family> used = version.formula().lines().stream()
                .flatMap(line -> book.material(line.materialKey()).stream())
                .map(Material::family)
                .collect(Collectors.toSet());
        return sound().stream()
                .map(StockedLot::lot)
                .filter(lot -> lot.expires().map(end -> !end.isAfter(day)).orElse(false))
                .map(Lot::materialKey)
                .filter(key -> book.material(key)
                        .map(card -> used.contains(card.family()) && isMovable(card.family()))
                        .orElse(false))
                .collect(Collectors.toSet());
    }

    private static boolean isMovable(Family family) {
        return family == Family.SURFACTANT || FigureNames.isShelf(family);
    }

    /** Substances of 0.01 % and more, water aside, which has its own band; by name. */
    Map<String, String> constituents() {
        Map<String, String> byName = new TreeMap<>();
        Subject subject = Subjects.of(version.formula(), product.brief());
        Judgement.of(desk, subject, book).composition().shares().stream()
                .filter(share -> share.inThePot().nominal() >= LEAST_SHOWN
                        && !share.substance().equals("water"))
                .forEach(share -> book.substance(share.substance())
                        .ifPresent(known -> byName.put(known.inciName(), share.substance())));
        return byName;
    }

    /** Names of the figures that this version has and that may have a band of their own. */
    List<String> figures() {
        List<String> figures = new ArrayList<>();
        Subject subject = Subjects.of(version.formula(), product.brief());
        Figures judged = Judgement.of(desk, subject, book).figures();
        judged.activeMatterPercent().keySet().forEach(charge -> figures.add(FigureNames.activeMatter(charge)));
        if (judged.others().stream()
                        .map(Figure::name)
                        .filter(FigureNames::isHlb)
                        .count()
                > 1) {
            figures.add(FigureNames.HLB_AGAINST_OILS);
        }
        version.formula().lines().stream()
                .flatMap(line -> book.material(line.materialKey()).stream())
                .map(Material::family)
                .filter(FigureNames::isShelf)
                .distinct()
                .forEach(family -> figures.add(FigureNames.shelf(family)));
        return figures;
    }

    String name(String materialKey) {
        return book.material(materialKey).map(card -> card.name()).orElse(materialKey);
    }
}
