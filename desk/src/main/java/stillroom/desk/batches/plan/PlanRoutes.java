package stillroom.desk.batches.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.premix.PremixBeginning;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.formulary.plan.PremixPlan;

/** Planning a batch from a version of a formula, and beginning it. */
public final class PlanRoutes {
    private static final String PATH = "/products/{id}/versions/{number}/plan";
    private static final String TEMPLATE = "batches/plan/plan.jte";

    private PlanRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.get(PATH + "/shopping", request -> shopping(desk, request));
        routes.post(PATH, request -> begin(desk, request));
        routes.post(PATH + "/premix", request -> premix(desk, request));
    }

    private static void show(Desk desk, Context request) {
        PlanDesk plan = PlanDesk.of(desk, request);
        boolean asked = request.queryParam("by") != null;
        Input input = asked ? Input.ofQuery(request) : FirstSize.of(plan);
        PlanPage page = new PlanWork(plan, input).page(desk.frame(request, "Plan a batch", PlanWork.SECTION));
        desk.pages().show(request, TEMPLATE, page);
    }

    private static void shopping(Desk desk, Context request) {
        PlanDesk plan = PlanDesk.of(desk, request);
        PlanPage page =
                new PlanWork(plan, Input.ofQuery(request)).page(desk.frame(request, "Shopping list", PlanWork.SECTION));
        desk.pages().show(request, "batches/plan/shopping.jte", page);
    }

    /** Makes the premix of a line that is too little, and leads to the bench where it is weighed. */
    private static void premix(Desk desk, Context request) {
        PlanDesk plan = PlanDesk.of(desk, request);
        Input input = Input.of(request);
        PlanWork work = new PlanWork(plan, input);
        String who = Who.begins(input.text("who"), desk.ledger());
        Optional<PremixPlan> premix = work.premix(input.text("line"));
        if (premix.isEmpty()) {
            PlanPage page = work.page(desk.frame("Plan a batch", PlanWork.SECTION))
                    .withClash("This line can be weighed as it is, or no line of its phase can carry it.");
            desk.pages().showAgain(request, TEMPLATE, page);
            return;
        }
        if (plan.owned().isEmpty()) {
            desk.ledger().equipment().writeBalances(work.balances());
        }
        long batch = new PremixBeginning(desk, work.balances()).begin(premix.get(), who, work.address());
        request.redirect("/batches/" + batch + "/bench?did=planned", HttpStatus.SEE_OTHER);
    }

    private static void begin(Desk desk, Context request) {
        PlanDesk plan = PlanDesk.of(desk, request);
        Input input = Input.of(request);
        PlanWork work = new PlanWork(plan, input);
        Beginning.Outcome outcome = Beginning.of(work, input);
        Optional<Long> begun = outcome.batch();
        if (begun.isPresent()) {
            request.redirect("/batches/" + begun.get() + "/bench?did=planned", HttpStatus.SEE_OTHER);
            return;
        }
        PlanWork again = outcome.stale() ? new PlanWork(PlanDesk.of(desk, request), input) : work;
        PlanPage page = again.page(desk.frame("Plan a batch", PlanWork.SECTION)).withClash(outcome.clash());
        desk.pages().showAgain(request, TEMPLATE, page);
        if (outcome.stale()) {
            request.status(HttpStatus.CONFLICT);
        }
    }
}
