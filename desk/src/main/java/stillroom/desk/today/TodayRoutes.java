package stillroom.desk.today;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;

/** The start page. */
public final class TodayRoutes {
    private TodayRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/", request -> show(desk, request));
    }

    private static void show(Desk desk, Context request) {
        desk.pages().show(request, "today/today.jte", new TodayPage(desk.frame(request, "Today", Section.TODAY)));
    }
}
