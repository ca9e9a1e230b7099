package stillroom.desk.trials;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.MixtureDesign;

/** Sets of trials: planning, entering what was measured, and what follows from it. */
public final class TrialRoutes {
    private TrialRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        CurveRoutes.add(routes, desk);
        routes.get("/trials", request -> list(desk, request));
        routes.get("/trials/new", request -> ask(desk, request));
        routes.post("/trials/new", request -> make(desk, request));
        routes.get(
                "/trials/{key}", request -> Entering.show(desk, request, set(desk, request), Typed.NOTHING, List.of()));
        routes.post("/trials/{key}", request -> Entering.enter(desk, request));
        routes.post("/trials/{key}/more", request -> new Further(desk).add(request));
        routes.post("/trials/{key}/run", request -> new Further(desk).addOne(request));
        routes.post("/trials/{key}/take", request -> new Further(desk).takeBest(request));
        routes.get("/trials/{key}/runs.csv", request -> TrialCsv.handBack(desk, request, set(desk, request)));
        routes.get("/trials/{key}/results", request -> results(desk, request));
    }

    private static void list(Desk desk, Context request) {
        List<TrialListPage.Row> rows = new ArrayList<>();
        for (TrialSet set : new TrialBook(desk).all()) {
            long measured =
                    set.runs().stream().filter(run -> !run.measured().isEmpty()).count();
            String product = desk.ledger()
                    .products()
                    .product(set.base().product())
                    .map(Product::name)
                    .orElse("");
            rows.add(new TrialListPage.Row(
                    set.key(), set.name(), product, set.runs().size(), (int) measured));
        }
        List<TrialListPage.Start> starts = new ArrayList<>();
        for (Product product : desk.ledger().products().products()) {
            boolean trials = new TrialBook(desk).all().stream().anyMatch(set -> set.product() == product.id());
            desk.ledger()
                    .products()
                    .newest(product.id())
                    .filter(version -> !trials && version.formula().lines().size() > 1)
                    .ifPresent(version ->
                            starts.add(new TrialListPage.Start(product.id(), version.number(), product.name())));
        }
        desk.pages()
                .show(
                        request,
                        "trials/list.jte",
                        new TrialListPage(desk.frame(request, "Trials", Section.PRODUCTS), rows, starts, curves(desk)));
    }

    private static List<TrialListPage.Curve> curves(Desk desk) {
        return new KeptCurves(desk)
                .all().stream()
                        .map(curve -> new TrialListPage.Curve(
                                curve.key(),
                                curve.name(),
                                desk.ledger()
                                        .products()
                                        .product(curve.product())
                                        .map(Product::name)
                                        .orElse("")))
                        .toList();
    }

    private static Varied varied(Desk desk, Input input) {
        long id = input.whole("product", "The product", 1, Integer.MAX_VALUE).orElse(0);
        int number = input.whole("version", "The version", 1, Integer.MAX_VALUE).orElse(0);
        return varied(desk, new TrialSet.Base(id, number));
    }

    static Varied varied(Desk desk, TrialSet.Base base) {
        Product product = desk.ledger()
                .products()
                .product(base.product())
                .orElseThrow(() -> new NotFoundResponse("There is no product with this number."));
        FormulaVersion version = desk.ledger()
                .products()
                .version(base.product(), base.version())
                .orElseThrow(() -> new NotFoundResponse("This product has no such version."));
        return Varied.of(desk, product, version);
    }

    private static void ask(Desk desk, Context request) {
        Varied varied = varied(desk, Input.ofQuery(request));
        desk.pages()
                .show(
                        request,
                        "trials/new.jte",
                        NewTrialPage.of(
                                desk.frame(request, "New trials", Section.PRODUCTS), varied, Typed.NOTHING, List.of()));
    }

    private static void make(Desk desk, Context request) {
        Input input = Input.of(request);
        Varied varied = varied(desk, input.has("product") ? input : Input.ofQuery(request));
        Optional<NewTrial.Asked> asked = new NewTrial(input, varied).read();
        if (asked.isPresent()) {
            DesignAnswer answer = asked.get().answer();
            Optional<MixtureDesign> design =
                    answer.match(found -> Optional.of(found.design()), refused -> Optional.empty());
            if (design.isPresent()) {
                TrialSet set =
                        new Making(desk).make(varied, asked.get(), design.get().runs());
                request.redirect("/trials/" + set.key() + "?did=added", HttpStatus.SEE_OTHER);
                return;
            }
            answer.match(found -> List.<String>of(), DesignAnswer.Refused::reasons)
                    .forEach(sentence -> input.refuse("runs", sentence));
        }
        desk.pages()
                .showAgain(
                        request,
                        "trials/new.jte",
                        NewTrialPage.of(
                                desk.frame("New trials", Section.PRODUCTS),
                                varied,
                                input.typed(),
                                input.all("component")));
    }

    private static TrialSet set(Desk desk, Context request) {
        return new TrialBook(desk).one(request.pathParam("key"));
    }

    private static void results(Desk desk, Context request) {
        TrialSet set = set(desk, request);
        Results results = new Results(set, Weighed.of(desk, set), Input.ofQuery(request));
        desk.pages()
                .show(
                        request,
                        "trials/results.jte",
                        results.page(desk.frame(request, set.name() + ": results", Section.PRODUCTS)));
    }
}
