package stillroom.desk.batches.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Combined;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Struck;
import stillroom.formulary.batch.BatchEvent.VesselReady;
import stillroom.formulary.batch.LogEntry;

/** The bench screen, and the one address to which every act of the bench is posted. */
public final class BenchRoutes {
    private static final String TEMPLATE = "batches/bench/bench.jte";

    private BenchRoutes() {}

    public static void add(RoutesConfig routes, Desk desk, RunningTimers timers) {
        routes.get("/batches/{id}/bench", request -> show(desk, request));
        routes.post("/batches/{id}/log", request -> log(desk, timers, request));
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        BenchView view = new BenchView(work, Input.ofQuery(request), "");
        readdress(request);
        desk.pages().show(request, TEMPLATE, view.page(desk.frame(request, title(work), Section.BATCHES)));
    }

    private static void log(Desk desk, RunningTimers timers, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        LogPost.Outcome outcome = new LogPost(work, input).take(() -> new ActReader(work, input).event());
        if (outcome.entry().isPresent()) {
            timers.forget();
            if (outcome.entry().get().event() instanceof VesselReady) {
                new Readying(work, input).markUsed();
            }
            request.redirect(after(work, input, outcome.entry().get()), HttpStatus.SEE_OTHER);
            return;
        }
        BenchView view = new BenchView(work, input, outcome.meanwhile());
        desk.pages().showAgain(request, TEMPLATE, view.page(desk.frame(title(work), Section.BATCHES)));
        if (!outcome.meanwhile().isEmpty()) {
            request.status(HttpStatus.CONFLICT);
        }
    }

    private static String title(BatchWork work) {
        return work.batch().code() + " at the bench";
    }

    /** Where one goes on: the page that one came from, else the same vessel with what comes next in it. */
    private static String after(BatchWork work, Input input, LogEntry entry) {
        BatchEvent event = entry.event();
        String did = did(work, event);
        if (input.text("back").equals("overview")) {
            return work.path() + "?did=" + did + "#log";
        }
        String vessel = vessel(event).orElse(input.text("vessel"));
        if (event instanceof Poured poured && poured.purpose() == BatchEvent.Purpose.MISTAKE) {
            return work.path() + "/bench"
                    + Wish.query(poured.vessel(), Doing.ASTRAY, "entry", Integer.toString(entry.number()))
                    + "&did=" + did;
        }
        String line = event instanceof Poured poured ? stillOpen(work, poured) : "";
        return work.path() + "/bench?vessel=" + Wish.coded(vessel) + line + "&did=" + did;
    }

    private static String did(BatchWork before, BatchEvent event) {
        if (event instanceof Poured poured) {
            boolean doubtful = poured.lineId()
                    .flatMap(before::line)
                    .filter(line -> QsFigure.doubtful(
                            before, line, before.state().poured(line.lineId()).plus(poured.mass())))
                    .isPresent();
            return doubtful ? "check" : "logged";
        }
        return event instanceof Struck ? "struck" : "logged";
    }

    /** A part that is swapped in has an address too: loading the page again shows what is on the screen now. */
    private static void readdress(Context request) {
        if (request.header("HX-Request") == null) {
            return;
        }
        String query = request.queryParamMap().entrySet().stream()
                .filter(field -> !field.getKey().equals("did"))
                .map(field -> Wish.coded(field.getKey()) + "="
                        + Wish.coded(field.getValue().get(0)))
                .collect(Collectors.joining("&"));
        request.header("HX-Replace-Url", request.path() + (query.isEmpty() ? "" : "?" + query));
    }

    private static Optional<String> vessel(BatchEvent event) {
        if (event instanceof VesselReady ready) {
            return Optional.of(ready.vessel());
        }
        if (event instanceof BatchEvent.PhasesGiven given) {
            return Optional.of(given.vessel());
        }
        return event instanceof Combined combined ? Optional.of(combined.into()) : Optional.empty();
    }

    /** A line that is short after a pour stays before one: the next pour is most likely for it. */
    private static String stillOpen(BatchWork before, Poured poured) {
        return poured.lineId()
                .flatMap(before::line)
                .filter(line -> !line.toReading())
                .filter(line -> {
                    var in = before.state().poured(line.lineId()).plus(poured.mass());
                    return poured.mass().signum() > 0
                            && in.compareTo(line.target().minus(line.tolerance())) < 0;
                })
                .map(line -> "&do=weigh&line=" + Wish.coded(line.lineId()))
                .orElse("");
    }
}
