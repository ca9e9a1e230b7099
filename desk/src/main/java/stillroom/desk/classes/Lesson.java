package stillroom.desk.classes;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.premix.PremixDrawers;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.LotCard;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.ClassOf;
import stillroom.formulary.plan.ClassPremix;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.PremixPlan;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.formulary.plan.PremixUse;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.lot.StockedLot;

/** A class with all that its pages look at. */
record Lesson(Desk desk, String key, ClassOf of, Product product, FormulaVersion version, MaterialBook book) {
    static Drawer<ClassOf> drawer(Desk desk) {
        return desk.ledger().drawer("class", ClassOf.class);
    }

    static Lesson of(Desk desk, Context request) {
        String key = Long.toString(Desk.id(request, "class"));
        ClassOf of = drawer(desk).read(key).orElseThrow(() -> new NotFoundResponse("There is no such class."));
        Product product = desk.ledger().products().product(of.productId()).orElseThrow();
        FormulaVersion version =
                desk.ledger().products().version(of.productId(), of.version()).orElseThrow();
        return new Lesson(
                desk, key, of, product, version, desk.ledger().materials().book(version));
    }

    String path() {
        return "/classes/" + key;
    }

    private Balance balance() {
        return new Balance("class balance", of.step(), Optional.empty(), Grams.of("100000"));
    }

    /** What one set holds of each line, by the formula itself; empty where it cannot be planned. */
    Optional<Plan> asWritten() {
        return plan(version.formula(), book, List.of(), Map.of());
    }

    /** The premix that a line still needs, in the amount for all sets. */
    Optional<PremixPlan> premix(String lineId) {
        return asWritten()
                .flatMap(plan -> version.formula()
                        .line(lineId)
                        .flatMap(line -> Optional.ofNullable(of.premixes().get(lineId))
                                .flatMap(version.formula()::line)
                                .flatMap(carrier ->
                                        ClassPremix.of(of, line, carrier, exact(plan, line), exact(plan, carrier)))));
    }

    /** The lines that are to come as a premix which does not stand ready yet: until then they are weighed as they are. */
    List<Line> waiting() {
        return version.formula().lines().stream()
                .filter(line ->
                        premix(line.id()).isPresent() && ready(line.id()).isEmpty())
                .toList();
    }

    /** The materials of {@link #waiting} by name. */
    List<String> waitingNames() {
        Cards cards = new Cards(book);
        return waiting().stream().map(line -> cards.name(line.materialKey())).toList();
    }

    private Grams exact(Plan plan, Line line) {
        return plan.line(line.id())
                .map(PlannedLine::asked)
                .map(percent -> percent.of(of.each()))
                .orElse(Grams.ZERO);
    }

    /** A premix that stands ready for a line. */
    record Ready(PremixUse use, Lot lot, Material card) {}

    /** The lot of premix that a line is weighed from, newest first. */
    Optional<Ready> ready(String lineId) {
        Optional<Line> line = version.formula().line(lineId);
        Optional<Line> carrier = Optional.ofNullable(of.premixes().get(lineId)).flatMap(version.formula()::line);
        if (line.isEmpty() || carrier.isEmpty()) {
            return Optional.empty();
        }
        MaterialBook now = desk.ledger().materials().book();
        List<Ready> ready = new ArrayList<>();
        for (PremixRecipe recipe : new PremixDrawers(desk)
                .diluting(line.get().materialKey(), carrier.get().materialKey())) {
            for (StockedLot stocked : desk.ledger().lots().ofMaterial(recipe.materialKey())) {
                if (stocked.onHand().signum() > 0
                        && stocked.lot().state() == Lot.State.RELEASED
                        && !stocked.lot().expiredOn(desk.today())) {
                    now.material(recipe.materialKey())
                            .flatMap(card -> ready(now, card, stocked.lot(), lineId, carrier.get()))
                            .ifPresent(ready::add);
                }
            }
        }
        return ready.stream().reduce((one, later) -> later);
    }

    private Optional<Ready> ready(MaterialBook now, Material card, Lot lot, String lineId, Line carrier) {
        return lot.certificate()
                .flatMap(Certificate::strength)
                .or(card::strength)
                .map(strength ->
                        new PremixUse(lineId, card.key(), strength.percent().middle(), carrier.id()))
                .filter(use -> use.fits(version.formula()))
                .map(use -> new Ready(use, lot, LotCard.of(card, lot, now).card()));
    }

    /** One set as it is weighed: from the premixes that stand ready. */
    record Set(Formula formula, MaterialBook book, Optional<Plan> plan) {}

    Set set() {
        List<Ready> all = of.premixes().keySet().stream()
                .sorted()
                .flatMap(line -> ready(line).stream())
                .toList();
        Formula formula = version.formula();
        Map<String, Material> cards = new HashMap<>();
        for (Ready one : all) {
            if (one.use().fits(formula)) {
                formula = one.use().applied(formula);
                cards.put(one.card().key(), one.card());
            }
        }
        MaterialBook with = new CardsInstead(book, cards);
        Map<String, PercentRange> allowed =
                Judgement.limits(desk, Subjects.of(version.formula(), product.brief()), book);
        for (Ready one : all) {
            allowed = one.use().applied(allowed);
        }
        return new Set(formula, with, plan(formula, with, all, allowed));
    }

    private Optional<Plan> plan(
            Formula formula, MaterialBook with, List<Ready> ready, Map<String, PercentRange> allowed) {
        List<String> premixes = ready.stream().map(one -> one.card().key()).toList();
        List<String> chosen = ready.stream().map(one -> one.lot().code()).toList();
        List<LotStock> shelf = desk.ledger().lots().all().stream()
                .filter(stocked -> !premixes.contains(stocked.lot().materialKey())
                        || chosen.contains(stocked.lot().code()))
                .map(stocked -> new LotStock(stocked.lot(), stocked.onHand()))
                .toList();
        try {
            Bench bench = new Bench(List.of(balance()), shelf, Tolerances.USUAL);
            return Optional.of(
                    new Planner(with, bench, desk.today()).plan(formula, new BatchSize.Stated(of.each()), allowed));
        } catch (IllegalArgumentException doesNotAddUp) {
            return Optional.empty();
        }
    }
}
