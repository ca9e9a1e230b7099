package stillroom.desk.reformulation;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.reformulation.Answer;
import stillroom.formulary.reformulation.TradeOff;

/** A formula made anew. */
public final class ReformulationRoutes {
    private static final String PATH = "/products/{product}/versions/{number}/anew";
    /** A search that is over by then needs no second look. */
    private static final long WAIT_MILLISECONDS = 900;

    private static final long LONGEST_MILLISECONDS = 35_000;

    private ReformulationRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        add(routes, desk, ReformulationRoutes::begin);
    }

    /** How a search is begun. */
    @FunctionalInterface
    interface Beginning {
        Searching of(Subjected subjected, Asked asked);
    }

    static void add(RoutesConfig routes, Desk desk, Beginning beginning) {
        Searches searches = new Searches(beginning);
        routes.get(PATH, request -> show(desk, searches, request));
        routes.post(PATH + "/stop", request -> stop(desk, searches, request));
        routes.post(PATH + "/take/{answer}", request -> take(desk, searches, request, Searching::found));
        routes.post(
                PATH + "/take-point/{answer}",
                request -> take(
                        desk,
                        searches,
                        request,
                        searching ->
                                searching.curve().stream().map(TradeOff::answer).toList()));
    }

    private static void show(Desk desk, Searches searches, Context request) {
        Subjected subjected = Subjected.of(desk, request);
        Asked asked = Asked.of(request);
        if (!asked.input().isSound()) {
            desk.pages()
                    .showAgain(
                            request,
                            "reformulation/anew.jte",
                            AnewView.of(desk, request, subjected, asked, Optional.empty()));
            return;
        }
        Optional<Searching> searching =
                asked.any() ? Optional.of(search(searches, subjected, asked, request)) : Optional.empty();
        searching.ifPresent(one -> one.await(WAIT_MILLISECONDS));
        desk.pages().show(request, "reformulation/anew.jte", AnewView.of(desk, request, subjected, asked, searching));
    }

    private static Searching search(Searches searches, Subjected subjected, Asked asked, Context request) {
        return searches.at(
                address(subjected, request), () -> searches.beginning().of(subjected, asked));
    }

    private static Searching begin(Subjected subjected, Asked asked) {
        return Searching.begin(subjected.recast(), subjected.shelf(asked), asked.wish(subjected), asked.curve());
    }

    /** The edit is part of it: a changed formula is another question; so is the day. */
    private static String address(Subjected subjected, Context request) {
        String query = request.queryString() == null ? "" : request.queryString();
        return subjected.path() + "?" + query + "#" + subjected.version().edit() + "#"
                + subjected.recast().asOf();
    }

    private static void stop(Desk desk, Searches searches, Context request) {
        Subjected subjected = Subjected.of(desk, request);
        searches.stop(address(subjected, request));
        request.redirect(subjected.path() + "?" + request.queryString(), HttpStatus.SEE_OTHER);
    }

    private static void take(Desk desk, Searches searches, Context request, Function<Searching, List<Answer>> answers) {
        Subjected subjected = Subjected.of(desk, request);
        Asked asked = Asked.of(request);
        if (!asked.input().isSound()) {
            throw new NotFoundResponse("There is no such answer.");
        }
        Searching searching = search(searches, subjected, asked, request);
        int number = (int) Desk.id(request, "answer");
        searching.await(answers.apply(searching).size() >= number ? 0 : LONGEST_MILLISECONDS);
        List<Answer> found = answers.apply(searching);
        if (number < 1 || number > found.size()) {
            throw new NotFoundResponse("There is no such answer.");
        }
        Answer taken = found.get(number - 1);
        FormulaVersion from = subjected.version();
        FormulaVersion made = desk.ledger()
                .products()
                .newVersion(
                        from.productId(),
                        Optional.of(from.number()),
                        taken.formula(),
                        AnewView.why(asked, subjected, taken),
                        desk.now());
        request.redirect(
                "/products/" + from.productId() + "/versions/" + made.number() + "?did=anew", HttpStatus.SEE_OTHER);
    }
}
