package stillroom.desk.today;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.ledger.workshop.Workshop;

/** The start page: what is due, and the first hello. */
public final class TodayRoutes {
    private static final String TEMPLATE = "today/today.jte";
    private static final int LONGEST_NAME = 120;

    private TodayRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/", request -> desk.pages().show(request, TEMPLATE, page(desk, request, Typed.NOTHING)));
        routes.post("/", request -> name(desk, request));
    }

    private static TodayPage page(Desk desk, Context request, Typed typed) {
        return new TodayView(desk).page(desk.frame(request, "Today", Section.TODAY), typed);
    }

    /** The first thing that a new workshop gets is its name. */
    private static void name(Desk desk, Context request) {
        Input input = Input.of(request);
        String name = input.required("name", "The name");
        if (name.length() > LONGEST_NAME) {
            input.refuse("name", "A name has up to " + LONGEST_NAME + " characters.");
        }
        if (!input.isSound()) {
            desk.pages().showAgain(request, TEMPLATE, page(desk, request, input.typed()));
            return;
        }
        Workshop now = desk.ledger().settings().read();
        desk.ledger()
                .settings()
                .write(new Workshop(
                        name,
                        now.responsiblePerson(),
                        now.addressLines(),
                        now.market(),
                        now.currency(),
                        now.decimalsShown(),
                        now.demonstration()));
        request.redirect("/?did=saved", HttpStatus.SEE_OTHER);
    }
}
