package stillroom.desk.batches.plan;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.desk.workshop.ToleranceRoutes;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.PremixPlan;
import stillroom.formulary.quantity.PercentRange;

/** What a plan is made from: the version, its cards, the balances and the shelf as they stand now. */
record PlanDesk(Desk desk, Product product, FormulaVersion version, MaterialBook book, List<Balance> owned) {
    static PlanDesk of(Desk desk, Context request) {
        long id = Desk.id(request, "id");
        int number = (int) Math.min(Integer.MAX_VALUE, Desk.id(request, "number"));
        Product product = desk.ledger()
                .products()
                .product(id)
                .orElseThrow(() -> new NotFoundResponse("There is no product with this number."));
        FormulaVersion version = desk.ledger()
                .products()
                .version(id, number)
                .orElseThrow(() -> new NotFoundResponse("This product has no version " + number + "."));
        MaterialBook book = desk.ledger().materials().book(version);
        return new PlanDesk(
                desk, product, version, book, desk.ledger().equipment().balances());
    }

    Plan plan(WeighedAs as, BatchSize size, List<Balance> balances, List<LotStock> shelf) {
        return planner(as, balances, shelf).plan(as.formula(), size, allowed(as));
    }

    /** How a line that is too little could be weighed as a premix. */
    Optional<PremixPlan> premix(
            WeighedAs as, BatchSize size, List<Balance> balances, List<LotStock> shelf, String lineId) {
        return planner(as, balances, shelf).premix(as.formula(), size, allowed(as), lineId);
    }

    private Planner planner(WeighedAs as, List<Balance> balances, List<LotStock> shelf) {
        return new Planner(as.book(), new Bench(balances, shelf, ToleranceRoutes.of(desk)), desk.today());
    }

    /** What a law, or a preservative's least, leaves of each line, as it is weighed. */
    Map<String, PercentRange> allowed(WeighedAs as) {
        return as.allowed(Judgement.limits(desk, Subjects.of(version.formula(), product.brief()), as.book()));
    }
}
