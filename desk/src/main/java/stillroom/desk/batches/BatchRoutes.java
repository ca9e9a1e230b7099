package stillroom.desk.batches;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;

/** The list of batches, and one batch. */
public final class BatchRoutes {
    private BatchRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/batches", request -> list(desk, request));
        routes.get("/batches/{id}", request -> one(desk, request));
    }

    private static void list(Desk desk, Context request) {
        BatchListPage page =
                BatchListPage.of(desk, desk.frame(request, "Batches", Section.BATCHES), Input.ofQuery(request));
        desk.pages().show(request, "batches/list.jte", page);
    }

    private static void one(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        desk.pages()
                .show(
                        request,
                        "batches/overview.jte",
                        OverviewPage.of(work, desk.frame(request, work.batch().code(), Section.BATCHES)));
    }
}
