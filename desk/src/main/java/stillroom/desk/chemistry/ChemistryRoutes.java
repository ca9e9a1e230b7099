package stillroom.desk.chemistry;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.quantity.Interval;

/** What keeps a version, and its surfactants, emulsion and charge. */
public final class ChemistryRoutes {
    private static final double NEUTRAL = 6;

    private ChemistryRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/products/{product}/versions/{version}/preservation", request -> preservation(desk, request));
        routes.get("/products/{product}/versions/{version}/emulsion", request -> emulsion(desk, request));
    }

    private static void emulsion(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        Surface surface = Judgement.surface(desk, of.subject(), of.book());
        SurfacePage page = SurfaceView.page(
                desk.frame(request, "Surfactants and emulsion", Section.PRODUCTS), of, surface, Input.ofQuery(request));
        desk.pages().show(request, "chemistry/surface.jte", page);
    }

    private static void preservation(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        Brief brief = of.product().brief();
        Interval band =
                brief.phBand().or(() -> brief.phTarget().map(Interval::point)).orElse(Interval.point(NEUTRAL));
        Preserving preserving =
                Judgement.preserving(desk, of.subject(), of.book(), PreservingCurve.span(band), PreservingCurve.STEP);
        desk.pages()
                .show(
                        request,
                        "chemistry/preserving.jte",
                        PreservingView.page(desk.frame(request, "Preservation", Section.PRODUCTS), of, preserving));
    }
}
