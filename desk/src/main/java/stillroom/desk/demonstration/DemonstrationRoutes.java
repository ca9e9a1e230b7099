package stillroom.desk.demonstration;

import io.javalin.config.RoutesConfig;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import stillroom.desk.shell.Desk;

/** Puts the invented workshop into an empty ledger. */
public final class DemonstrationRoutes {
    private DemonstrationRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.post("/demonstration", request -> fill(desk, request));
    }

    private static void fill(Desk desk, Context request) {
        if (!new Saltmarsh(desk).fill()) {
            throw new ConflictResponse(
                    "This workshop holds data of your own, so the demonstration was not mixed into it. Start with --data and an empty folder to look at it.");
        }
        request.redirect("/?did=demonstration", HttpStatus.SEE_OTHER);
    }
}
