package stillroom.desk.batches.premix;

import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.PremixCard;
import stillroom.formulary.plan.PremixPlan;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.weighing.Dilution;

/** Begins a premix: card, recipe, and a planned batch for each of its steps, all or nothing. */
public final class PremixBeginning {
    private static final MathContext SHOWN = new MathContext(3);

    private final Desk desk;
    private final PremixDrawers drawers;
    private final List<Balance> balances;

    /** @param balances those of the plan for which the premix is made */
    public PremixBeginning(Desk desk, List<Balance> balances) {
        this.desk = desk;
        this.drawers = new PremixDrawers(desk);
        this.balances = balances;
    }

    /**
     * The batch with which one begins.
     *
     * @param plan address of the plan to which one goes back
     */
    public long begin(PremixPlan premix, String who, String plan) {
        return desk.ledger().together(() -> {
            List<Long> batches = new ArrayList<>();
            String concentrate = premix.line().materialKey();
            Percent root = Percent.HUNDRED;
            for (Dilution.Step step : premix.dilution().steps()) {
                Percent share = Percent.share(new Grams(step.concentrate()), new Grams(step.made()));
                root = new Percent(
                        root.value().multiply(share.value()).movePointLeft(2).round(MathContext.DECIMAL64));
                PremixRecipe recipe = recipe(
                        premix.line().materialKey(),
                        concentrate,
                        premix.carrier().materialKey(),
                        share,
                        root);
                long batch = batch(recipe, new Grams(step.made()), who);
                drawers.purposes()
                        .write(
                                Long.toString(batch),
                                new PremixDrawers.Purpose(
                                        recipe.materialKey(), premix.line().id(), plan));
                batches.add(batch);
                concentrate = recipe.materialKey();
            }
            return batches.get(0);
        });
    }

    /** The one that is on file for this share, else a new one with its card and its product. */
    private PremixRecipe recipe(
            String rootKey, String concentrateKey, String carrierKey, Percent share, Percent rootShare) {
        Optional<PremixRecipe> known = drawers.recipes().list().stream()
                .filter(one -> one.concentrateKey().equals(concentrateKey)
                        && one.carrierKey().equals(carrierKey)
                        && one.share().equals(share))
                .findFirst();
        return known.orElseGet(() -> newRecipe(rootKey, concentrateKey, carrierKey, share, rootShare));
    }

    private PremixRecipe newRecipe(
            String rootKey, String concentrateKey, String carrierKey, Percent share, Percent rootShare) {
        MaterialBook book = desk.ledger().materials().book();
        Material root = card(book, rootKey);
        Material carrier = card(book, carrierKey);
        String name = "Premix of " + root.name() + ", "
                + new Grams(rootShare.value().round(SHOWN)) + " % in " + carrier.name();
        String key = freeKey(book, "premix-" + rootKey);
        desk.ledger()
                .materials()
                .save(PremixCard.of(
                        key,
                        name,
                        desk.today(),
                        card(book, concentrateKey),
                        carrier,
                        share,
                        PremixCard.strength(PercentRange.point(rootShare), root.name())));
        Product product = desk.ledger()
                .products()
                .add(name, Brief.of(ProductType.OTHER_LEAVE_ON), "A dilution for weighing small amounts; never sold.");
        Formula formula = PremixCard.recipe(concentrateKey, carrierKey, share);
        FormulaVersion version = desk.ledger()
                .products()
                .newVersion(product.id(), Optional.empty(), formula, "for weighing small amounts", desk.now());
        desk.ledger().products().keep(product.id(), version.number(), version.edit());
        PremixRecipe recipe = new PremixRecipe(key, product.id(), concentrateKey, carrierKey, share);
        drawers.recipes().write(key, recipe);
        return recipe;
    }

    private static Material card(MaterialBook book, String key) {
        return book.material(key).orElseThrow(() -> new IllegalArgumentException("there is no card " + key));
    }

    private static String freeKey(MaterialBook book, String stem) {
        int number = 1;
        while (book.material(stem + "-" + number).isPresent()) {
            number++;
        }
        return stem + "-" + number;
    }

    private long batch(PremixRecipe recipe, Grams made, String who) {
        FormulaVersion version =
                desk.ledger().products().newest(recipe.productId()).orElseThrow();
        List<LotStock> shelf = desk.ledger().lots().all().stream()
                .map(stocked -> new LotStock(stocked.lot(), stocked.onHand()))
                .toList();
        Plan plan = new Planner(
                        desk.ledger().materials().book(), new Bench(balances, shelf, Tolerances.USUAL), desk.today())
                .plan(version.formula(), new BatchSize.Stated(made), Map.of());
        Batch batch = desk.ledger()
                .batches()
                .open(
                        recipe.productId(),
                        Optional.of(version.number()),
                        desk.ledger().batches().proposeCode(desk.today()),
                        desk.today())
                .orElseThrow();
        desk.ledger()
                .batches()
                .append(batch.id(), "begin-" + batch.id(), desk.now(), who, new BatchEvent.Planned(plan));
        return batch.id();
    }
}
