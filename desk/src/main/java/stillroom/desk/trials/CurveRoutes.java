package stillroom.desk.trials;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.trial.ViscosityCurve.Against;

/** Curves of viscosity: against salt or thickener, and against the shear rate. A look is asked in the address and keeps nothing. */
final class CurveRoutes {
    private CurveRoutes() {}

    static void add(RoutesConfig routes, Desk desk) {
        routes.get("/trials/salt-curve", request -> look(desk, request, Input.ofQuery(request), Against.DOSE));
        routes.get("/trials/flow-curve", request -> look(desk, request, Input.ofQuery(request), Against.SHEAR_RATE));
        KeptCurves.add(routes, desk);
    }

    private static void look(Desk desk, Context request, Input input, Against against) {
        CurvePage page = page(desk, request, input, against);
        if (page.typed().isSound()) {
            desk.pages().show(request, template(against), page);
        } else {
            desk.pages().showAgain(request, template(against), page);
        }
    }

    /** A look that could not be kept, with what was typed. */
    static void showAgain(Desk desk, Context request, Input input, Against against) {
        desk.pages().showAgain(request, template(against), page(desk, request, input, against));
    }

    private static String template(Against against) {
        return against == Against.DOSE ? "trials/salt.jte" : "trials/flow.jte";
    }

    private static CurvePage page(Desk desk, Context request, Input input, Against against) {
        List<Choice> products = desk.ledger().products().products().stream()
                .map(product -> new Choice(Long.toString(product.id()), product.name()))
                .toList();
        Frame frame = desk.frame(request, against == Against.DOSE ? "Salt curve" : "Flow curve", Section.PRODUCTS);
        return against == Against.DOSE
                ? new SaltWork(input).page(frame, products)
                : new FlowWork(input).page(frame, products);
    }
}
