package stillroom.desk.recipes;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;

/** Recipes for others: what they tell, and the files. */
public final class RecipeRoutes {
    private static final String VERSION = "/products/{product}/versions/{version}";

    private RecipeRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(VERSION + "/hand-out", request -> show(desk, request));
        routes.post(VERSION + "/hand-out", request -> save(desk, request));
        routes.get(VERSION + "/recipe.pdf", request -> pdf(desk, request));
        routes.get(VERSION + "/recipe.html", request -> file(desk, request));
    }

    private static void show(Desk desk, Context request) {
        Handing handing = Handing.of(desk, request);
        HandOut words = handing.words();
        desk.pages()
                .show(
                        request,
                        "recipes/handout.jte",
                        page(request, handing, words, new Typed(HandOutForm.fields(words), List.of())));
    }

    private static void save(Desk desk, Context request) {
        Handing handing = Handing.of(desk, request);
        Input input = Input.of(request);
        Optional<HandOut> read = HandOutForm.read(input, handing.version().formula());
        if (read.isPresent()) {
            handing.write(read.get());
            request.redirect(handing.path() + "/hand-out?did=saved", HttpStatus.SEE_OTHER);
        } else {
            desk.pages()
                    .showAgain(request, "recipes/handout.jte", page(request, handing, handing.words(), input.typed()));
        }
    }

    private static HandOutPage page(Context request, Handing handing, HandOut words, Typed typed) {
        String name = handing.product().name();
        return new HandOutPage(
                handing.desk().frame(request, name + ", recipe", Section.PRODUCTS),
                name,
                handing.version().number(),
                handing.path(),
                typed,
                HandOutRows.of(handing),
                handing.problems(words).stream().map(Problem::sentence).toList());
    }

    private static void pdf(Desk desk, Context request) {
        Handing handing = Handing.of(desk, request);
        Recipe recipe = recipe(handing, handing.sheet(sized(handing, request)), handing.allowed());
        Sheets.answer(
                request,
                Sheets.onOnePage(desk.pages(), "recipes/recipe.jte", recipe),
                handing.product().name() + " recipe");
    }

    private static void file(Desk desk, Context request) {
        Handing handing = Handing.of(desk, request);
        RecipeSheet sheet = handing.sheet(sized(handing, request));
        Map<String, PercentRange> allowed = handing.allowed();
        Recipe recipe = recipe(handing, sheet, allowed);
        String name = Sheets.fileName(handing.product().name() + " recipe");
        request.header("Content-Disposition", "attachment; filename=\"" + name + ".html\"");
        request.html(RecipeFile.of(desk.pages(), recipe, sheet, allowed));
    }

    private static Recipe recipe(Handing handing, RecipeSheet sheet, Map<String, PercentRange> allowed) {
        LocalDate today = handing.desk().today();
        List<Problem> problems = sheet.problems(allowed, today);
        if (!problems.isEmpty()) {
            throw new BadRequestResponse(
                    "There is no recipe yet: " + problems.get(0).sentence());
        }
        return sheet.of(sheet.plan(allowed, today), today);
    }

    /** The author's words, at the size asked for in the address where one is. */
    private static HandOut sized(Handing handing, Context request) {
        HandOut words = handing.words();
        String typed = request.queryParam("grams");
        if (typed == null || typed.isBlank()) {
            return words;
        }
        Grams size = Decimals.read(typed)
                .map(Grams::new)
                .filter(grams -> grams.signum() > 0)
                .orElseThrow(() -> new BadRequestResponse("The batch size \"" + typed + "\" is not a mass in grams."));
        return new HandOut(size, words.step(), words.lines(), words.suppliers(), words.prices());
    }
}
