package stillroom.desk.trace;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.material.Lot;
import stillroom.ledger.lot.StockedLot;
import stillroom.ledger.trace.Reach;
import stillroom.ledger.trace.TraceStart;

/** One page for recall, law change and supplier change, and the stop that follows from it. */
public final class TraceRoutes {
    private static final String PATH = "/trace";
    private static final String TEMPLATE = "trace/trace.jte";

    private TraceRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH + "/hold", request -> hold(desk, request));
    }

    private static void show(Desk desk, Context request) {
        Input input = Input.ofQuery(request);
        Frame frame = desk.frame(request, "Trace", Section.BATCHES);
        desk.pages().show(request, TEMPLATE, page(desk, frame, input, Typed.NOTHING));
    }

    private static TracePage page(Desk desk, Frame frame, Input input, Typed hold) {
        TraceAsk ask = TraceAsk.of(desk, input);
        Optional<Impact> impact = ask.start().map(start -> new ImpactView(desk).impact(ask, start));
        return new TracePage(
                frame,
                input.typed(),
                TraceWords.choices(),
                impact,
                ask.start().isEmpty() ? ask.word() : "",
                "/trace.pdf?" + query(input),
                ask.alternatives().stream()
                        .map(kind -> new Choice(
                                PATH + "?kind=" + kind.name() + "&q=" + Encoded.of(ask.word()), TraceWords.kind(kind)))
                        .toList(),
                hold);
    }

    private static String query(Input input) {
        return "q=" + Encoded.of(input.text("q")) + "&kind=" + Encoded.of(input.text("kind")) + "&from="
                + Encoded.of(input.text("from")) + "&to=" + Encoded.of(input.text("to"));
    }

    /** What the printed sheet shows for the same question. */
    public static Optional<Impact> impact(Desk desk, Context request) {
        TraceAsk ask = TraceAsk.of(desk, Input.ofQuery(request));
        return ask.start().map(start -> new ImpactView(desk).impact(ask, start));
    }

    private static void hold(Desk desk, Context request) {
        Input input = Input.of(request);
        TraceAsk ask = TraceAsk.of(desk, input);
        String why = input.required("why", "The reason");
        String by = input.required("by", "Who stops it");
        if (!input.isSound() || ask.start().isEmpty()) {
            Frame frame = desk.frame("Trace", Section.BATCHES);
            desk.pages().showAgain(request, TEMPLATE, page(desk, frame, input, input.typed()));
            return;
        }
        desk.ledger().together(() -> stopped(desk, ask.start().get(), why, by));
        request.redirect(PATH + "?" + query(input) + "&did=held", HttpStatus.SEE_OTHER);
    }

    /** All at once: open bulk, units on the shelf, and lots that could still be poured. */
    private static Reach stopped(Desk desk, TraceStart start, String why, String by) {
        Reach reach = desk.ledger().traces().reach(start);
        BatchEvent stop = new BatchEvent.Concerned(new Concern.Stopped(Concern.Stop.HOLD, why, Optional.empty()));
        ImpactView.openOnes(reach)
                .forEach(one -> desk.ledger()
                        .batches()
                        .append(one.row().batch().id(), UUID.randomUUID().toString(), desk.now(), by, stop));
        if (ImpactView.holdsLots(start.kind())) {
            quarantined(desk, reach);
        }
        return reach;
    }

    private static void quarantined(Desk desk, Reach reach) {
        List<Lot> free = reach.lots().stream()
                .flatMap(lot -> lot.stocked().stream())
                .map(StockedLot::lot)
                .filter(lot -> lot.state() == Lot.State.RELEASED)
                .toList();
        free.forEach(lot -> desk.ledger().lots().change(lot.in(Lot.State.QUARANTINE)));
    }
}
