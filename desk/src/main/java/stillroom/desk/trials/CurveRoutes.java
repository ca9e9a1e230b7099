package stillroom.desk.trials;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;

/** Curves of viscosity: against salt or thickener, and against the shear rate. They are asked in the address and keep nothing. */
final class CurveRoutes {
    private CurveRoutes() {}

    static void add(RoutesConfig routes, Desk desk) {
        routes.get("/trials/salt-curve", request -> salt(desk, request));
        routes.get("/trials/flow-curve", request -> flow(desk, request));
    }

    private static void salt(Desk desk, Context request) {
        SaltWork work = new SaltWork(Input.ofQuery(request));
        show(desk, request, "trials/salt.jte", work.page(desk.frame(request, "Salt curve", Section.PRODUCTS)));
    }

    private static void flow(Desk desk, Context request) {
        FlowWork work = new FlowWork(Input.ofQuery(request));
        show(desk, request, "trials/flow.jte", work.page(desk.frame(request, "Flow curve", Section.PRODUCTS)));
    }

    private static void show(Desk desk, Context request, String template, CurvePage page) {
        if (page.typed().isSound()) {
            desk.pages().show(request, template, page);
        } else {
            desk.pages().showAgain(request, template, page);
        }
    }
}
