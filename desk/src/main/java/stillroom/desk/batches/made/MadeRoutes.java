package stillroom.desk.batches.made;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.formulary.formula.FormulaVersion;

/** What was really made, and carrying it into a new version of the formula. */
public final class MadeRoutes {
    private MadeRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/batches/{id}/as-made", request -> show(desk, request));
        routes.get("/batches/{id}/as-made/carry", request -> preview(desk, request));
        routes.post("/batches/{id}/as-made/carry", request -> carry(desk, request));
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        String title = work.batch().code() + " as made";
        desk.pages()
                .show(
                        request,
                        "batches/made/made.jte",
                        new MadeView(work).page(desk.frame(request, title, Section.BATCHES)));
    }

    private static void preview(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Carrying carrying = something(work);
        String title = work.batch().code() + " into a new version";
        desk.pages()
                .show(request, "batches/made/carry.jte", carrying.page(desk.frame(request, title, Section.BATCHES)));
    }

    private static void carry(Desk desk, Context request) {
        FormulaVersion version = something(BatchWork.of(desk, request)).begin();
        request.redirect(
                "/products/" + version.productId() + "/versions/" + version.number() + "?did=carried",
                HttpStatus.SEE_OTHER);
    }

    private static Carrying something(BatchWork work) {
        Carrying carrying = new Carrying(work);
        if (carrying.isEmpty()) {
            throw new NotFoundResponse("Nothing was weighed yet, so there is nothing to carry into a formula.");
        }
        return carrying;
    }
}
