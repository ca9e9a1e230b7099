package stillroom.desk.batches.cost;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.BigDecimal;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.CostSheet;
import stillroom.formulary.quantity.Money;

/** The cost of a batch, and what a dearer material does. */
public final class CostRoutes {
    private static final String PATH = "/batches/{id}/cost";
    private static final String TEMPLATE = "batches/cost/cost.jte";

    private CostRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH, request -> save(desk, request));
        routes.get("/costs", request -> rise(desk, request));
    }

    private static String title(BatchWork work) {
        return work.batch().code() + ": cost";
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        desk.pages()
                .show(
                        request,
                        TEMPLATE,
                        new CostView(work).page(desk.frame(request, title(work), Section.BATCHES), Optional.empty()));
    }

    private static void save(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        Optional<Money> pack = input.money("pack", "The container");
        Optional<Integer> minutes = input.whole("minutes", "The minutes", 0, 100_000);
        Optional<Money> hour = input.money("hour", "The hour");
        Optional<Money> overhead = input.money("overhead", "The overhead");
        Optional<BigDecimal> margin = input.decimal("margin", "The margin", "0", "99");
        if (!input.isSound()) {
            desk.pages()
                    .showAgain(
                            request,
                            TEMPLATE,
                            new CostView(work)
                                    .page(desk.frame(title(work), Section.BATCHES), Optional.of(input.typed())));
            return;
        }
        CostSheet sheet = new CostSheet(
                pack,
                minutes.orElse(0),
                hour.orElse(Money.ZERO),
                overhead.orElse(Money.ZERO),
                input.has("tax"),
                margin.orElse(BigDecimal.ZERO),
                input.has("rejected"));
        new Costing(desk).sheets().write(Long.toString(work.batch().id()), sheet);
        request.redirect(work.path() + "/cost?did=saved", HttpStatus.SEE_OTHER);
    }

    private static void rise(Desk desk, Context request) {
        Input input = Input.ofQuery(request);
        Optional<BigDecimal> percent = input.decimal("percent", "The rise", "-100", "10000");
        desk.pages()
                .show(
                        request,
                        "batches/cost/rise.jte",
                        new RiseView(desk)
                                .page(
                                        desk.frame(request, "What a dearer material does", Section.PRODUCTS),
                                        input.typed(),
                                        input.text("material"),
                                        percent));
    }
}
