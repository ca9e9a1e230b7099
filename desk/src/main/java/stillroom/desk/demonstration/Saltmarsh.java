package stillroom.desk.demonstration;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.store.Saved;
import stillroom.ledger.workshop.Workshop;

/** Fills an empty ledger with the invented workshop, by the same doors through which a maker would. */
record Saltmarsh(Desk desk, Ledger ledger, Instant now) {
    static final String FIRST = "Wren Fenn";
    static final String SECOND = "Tam Moor";

    Saltmarsh(Desk desk) {
        this(desk, desk.ledger(), desk.now());
    }

    /** Whether nothing was ever written into a ledger, so that nothing can be mixed up with what is invented. */
    static boolean isEmpty(Ledger ledger) {
        return ledger.settings().read().equals(Workshop.UNNAMED)
                && ledger.products().products().isEmpty()
                && ledger.lots().all().isEmpty()
                && ledger.materials().own().isEmpty()
                && ledger.equipment().balances().isEmpty()
                && ledger.batches().page(BatchQuery.ALL, 0, 1).total() == 0;
    }

    /** All or nothing; false (and nothing stored) where the ledger is not empty. */
    boolean fill() {
        return ledger.together(() -> {
            if (!isEmpty(ledger)) {
                return false;
            }
            workshop();
            new Equipment(desk, now).write();
            shelf();
            products();
            return true;
        });
    }

    private void workshop() {
        ledger.settings()
                .write(new Workshop(
                        "Saltmarsh Lane",
                        FIRST,
                        List.of("3 Saltmarsh Lane", "00000 Inventedham", "Nowhere"),
                        "EU",
                        "EUR",
                        2,
                        true));
        ledger.equipment()
                .writeBalances(List.of(
                        new Balance("Bench balance", Grams.of("0.01"), Optional.of(Grams.of("0.006")), Grams.of("600")),
                        new Balance("Big scale", Grams.of("0.1"), Optional.empty(), Grams.of("6000"))));
    }

    /** The cards of all that was bought, with what was paid for it, and the lots; a later lot's price is the card's. */
    private void shelf() {
        LocalDate today = LocalDate.ofInstant(now, desk.zone());
        MaterialBook book = ledger.materials().book();
        Map<String, Delivery> newest = Delivery.ALL.stream()
                .collect(Collectors.toMap(Delivery::material, Function.identity(), (earlier, later) -> later));
        newest.forEach((key, delivery) -> {
            Material card = book.material(key).orElseThrow();
            ledger.materials().save(OwnCard.of(card, delivery, today));
        });
        Delivery.ALL.forEach(delivery -> ledger.lots().add(delivery.lot(today)));
    }

    private void products() {
        Batches batches = new Batches(desk, now);
        FormulaVersion handWash = handWash();
        batches.handWash(handWash);
        pourAway("WAT-06");
        FormulaVersion toner = kept(LacticToner.NAME, LacticToner.brief(), LacticToner.formula());
        batches.toner(toner);
        new Afterwards(desk, now).papers(toner.productId());
        batches.lotion(kept(HandLotion.NAME, HandLotion.brief(), HandLotion.formula()));
        batches.conditioner(kept(HairConditioner.NAME, HairConditioner.brief(), HairConditioner.formula()));
        Product balm = product(CalendulaBalm.NAME, CalendulaBalm.brief());
        version(balm, Optional.empty(), CalendulaBalm.formula(), "");
        HandWashTrials.write(desk, handWash);
    }

    /** Two kept versions, to be laid side by side. */
    private FormulaVersion handWash() {
        Product product = product(HandWash.NAME, HandWash.brief());
        FormulaVersion first = keep(version(product, Optional.empty(), HandWash.first(), "First trial."));
        FormulaVersion second = keep(version(
                product,
                Optional.of(first.number()),
                HandWash.second(),
                "More surfactant, as the first came out thin; half the perfume."));
        ledger.labels().write(product.id(), second.number(), label());
        return second;
    }

    private static LabelSheet label() {
        Durability durability = new Durability(
                Optional.empty(), Optional.of(12), "Invented study: twelve weeks in the pump, opened daily.", FIRST);
        LabelInput input = new LabelInput(
                HandWash.NAME,
                "Washes hands gently",
                "250 ml",
                "",
                "",
                "en",
                Optional.of(durability),
                List.of("Rinse well if it gets into the eyes."));
        return new LabelSheet(input, 90, 60);
    }

    private FormulaVersion kept(String name, Brief brief, Formula formula) {
        return keep(version(product(name, brief), Optional.empty(), formula, ""));
    }

    private Product product(String name, Brief brief) {
        return ledger.products().add(name, brief, "Invented for the demonstration.");
    }

    private FormulaVersion version(Product product, Optional<Integer> basedOn, Formula formula, String why) {
        return ledger.products().newVersion(product.id(), basedOn, formula, why, now);
    }

    private FormulaVersion keep(FormulaVersion draft) {
        Saved<FormulaVersion> kept = ledger.products().keep(draft.productId(), draft.number(), draft.edit());
        return kept.match(Function.identity(), stale -> {
            throw new IllegalStateException("the demonstration's draft was changed while it was written");
        });
    }

    /** What was left of an old lot went down the drain; the book says so. */
    private void pourAway(String code) {
        ledger.lots().countStock(code, Grams.ZERO, "Past its date, poured away.", now, SECOND);
        Lot lot = ledger.lots().lot(code).orElseThrow().lot();
        ledger.lots().change(lot.in(Lot.State.USED_UP));
    }
}
