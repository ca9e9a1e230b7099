package stillroom.desk.scale;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.LiveScale;
import stillroom.science.weighing.ScaleLine;

/** Answers the bench what a balance shows, in one line of JSON. */
public final class ScaleRoutes {
    private static final Duration PATIENCE = Duration.ofMillis(1500);

    private ScaleRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/scales/{name}/weight", request -> weight(desk, request));
        routes.post("/scales/{name}/line", request -> line(desk, request));
    }

    private static LiveScale live(Desk desk, Context request) {
        String name = request.pathParam("name");
        return desk.ledger().equipment().balances().stream()
                .filter(balance -> balance.name().equals(name))
                .findFirst()
                .flatMap(Balance::live)
                .orElseThrow(() -> new NotFoundResponse("No line of a balance called " + name + " is on file."));
    }

    /** What the serial line of this computer sends now. */
    private static void weight(Desk desk, Context request) {
        LiveScale live = live(desk, request);
        if (live.device().isEmpty()) {
            throw new NotFoundResponse("The browser reads this balance.");
        }
        Optional<ScaleLine.Reading> reading =
                live.line().flatMap(line -> new SerialLine(Path.of(live.device())).newest(line, PATIENCE));
        answer(request, reading);
    }

    /** A line that the browser read. */
    private static void line(Desk desk, Context request) {
        String sent = Optional.ofNullable(request.formParam("line")).orElse("");
        answer(request, live(desk, request).line().flatMap(line -> line.read(sent)));
    }

    private static void answer(Context request, Optional<ScaleLine.Reading> reading) {
        request.contentType("application/json");
        request.result(reading.map(
                        one -> "{\"grams\":\"" + one.grams().toPlainString() + "\",\"stable\":" + one.stable() + "}")
                .orElse("{}"));
    }
}
