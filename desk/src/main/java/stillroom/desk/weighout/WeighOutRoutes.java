package stillroom.desk.weighout;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Desk;
import stillroom.desk.trials.TrialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.trial.TrialSet;

/** All runs of a set of trials on one printed sheet: {@code /trials/t0001/weigh-out.pdf?grams=100}. */
public final class WeighOutRoutes {
    private static final Grams USUAL = Grams.of("100");

    private WeighOutRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/trials/{key}/weigh-out.pdf", request -> pdf(desk, request));
    }

    private static void pdf(Desk desk, Context request) {
        String key = request.pathParam("key");
        TrialSet set = new TrialBook(desk)
                .all().stream()
                        .filter(one -> one.key().equals(key))
                        .findFirst()
                        .orElseThrow(() -> new NotFoundResponse("There is no set of trials at this address."));
        WeighOut sheet = new Beakers(desk, set, mass(request)).sheet();
        Sheets.answer(request, Sheets.set(desk.pages(), "weighout/weighout.jte", sheet), set.name() + " weigh-out");
    }

    private static Grams mass(Context request) {
        String typed = request.queryParam("grams");
        return typed == null || typed.isBlank()
                ? USUAL
                : Decimals.read(typed)
                        .filter(grams -> grams.signum() > 0 && grams.doubleValue() <= 1_000_000)
                        .map(Grams::new)
                        .orElseThrow(() -> new BadRequestResponse("\u201c" + typed + "\u201d is not a mass in grams."));
    }
}
