package stillroom.desk.dosing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.quantity.Grams;

/** Correcting the pH of what stands in a vessel. */
public final class DosingRoutes {
    private static final String TEMPLATE = "dosing/dosing.jte";

    private final Desk desk;

    private DosingRoutes(Desk desk) {
        this.desk = desk;
    }

    /** The tables of constants are read once, when they are first asked for. */
    private static final class Tables {
        static final PhConstants PH = PhConstants.shipped();
    }

    public static void add(RoutesConfig routes, Desk desk) {
        DosingRoutes dosing = new DosingRoutes(desk);
        routes.get("/batches/{id}/ph", dosing::show);
        routes.post("/batches/{id}/ph", dosing::log);
        routes.post("/batches/{id}/ph/reserve", dosing::reserve);
    }

    private void show(Context request) {
        BatchWork work = BatchWork.of(desk, request);
        DosingView view = new DosingView(work, Input.ofQuery(request), Tables.PH);
        Frame frame = desk.frame(request, title(work), Section.BATCHES);
        desk.pages().show(request, TEMPLATE, view.page(frame, ""));
    }

    private void log(Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        DosingView view = new DosingView(work, input, Tables.PH);
        ActReader reader = new ActReader(input, view.ask());
        LogPost.Outcome outcome = new LogPost(work, input).take(reader::event);
        if (outcome.entry().isEmpty()) {
            desk.pages()
                    .showAgain(
                            request, TEMPLATE, view.page(desk.frame(title(work), Section.BATCHES), input.text("act")));
            return;
        }
        if (outcome.entry().get().event() instanceof BatchEvent.TitrationBegun) {
            firstReading(work, input, reader, outcome.entry().get());
        }
        request.redirect(work.path() + "/ph" + view.ask().query() + "&did=logged", HttpStatus.SEE_OTHER);
    }

    /** The pH before any addition came with the form of the sample; it is an entry of its own, once. */
    private void firstReading(BatchWork work, Input input, ActReader reader, LogEntry begun) {
        Optional<Double> pH = reader.pH();
        pH.ifPresent(read -> desk.ledger()
                .batches()
                .append(
                        work.batch().id(),
                        input.text("requestId") + "-0",
                        begun.at(),
                        begun.by(),
                        new BatchEvent.TitrationRead(begun.number(), Grams.ZERO, read)));
    }

    private void reserve(Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        DosingView view = new DosingView(work, input, Tables.PH);
        Optional<FormulaVersion> made = new Reserving(work, view.session(), view.ask()).make(input);
        if (made.isEmpty()) {
            desk.pages().showAgain(request, TEMPLATE, view.page(desk.frame(title(work), Section.BATCHES), "reserve"));
            return;
        }
        request.redirect(
                "/products/" + work.product().id() + "/versions/" + made.get().number() + "?did=copied",
                HttpStatus.SEE_OTHER);
    }

    private static String title(BatchWork work) {
        return "pH of " + work.batch().code();
    }
}
