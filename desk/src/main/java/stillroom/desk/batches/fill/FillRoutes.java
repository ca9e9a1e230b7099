package stillroom.desk.batches.fill;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent.Decided;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.ReleaseGate;

/** Filling containers, and releasing or rejecting the batch. */
public final class FillRoutes {
    private static final String PATH = "/batches/{id}/fill";
    private static final String TEMPLATE = "batches/fill/fill.jte";

    private FillRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH, request -> take(desk, request));
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        FillPage page = new FillView(work)
                .page(desk.frame(request, title(work), Section.BATCHES), Optional.empty(), Gates.of(work));
        desk.pages().show(request, TEMPLATE, page);
    }

    private static void take(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        List<ReleaseGate> gates = Gates.of(work);
        LogPost.Outcome outcome = new LogPost(work, input)
                .take(() -> new FillReader(input, gates, new Contents(work), new Packing(work)).event());
        if (outcome.entry().isPresent()) {
            request.redirect(work.path() + "/fill?did=" + did(outcome.entry().get()), HttpStatus.SEE_OTHER);
            return;
        }
        FillPage page = new FillView(work).page(desk.frame(title(work), Section.BATCHES), Optional.of(input), gates);
        desk.pages().showAgain(request, TEMPLATE, page);
    }

    private static String did(LogEntry entry) {
        if (entry.event() instanceof Decided decided) {
            return switch (decided.decision()) {
                case RELEASED -> "released";
                case REJECTED -> "rejected";
                case SCRAPPED -> "scrapped";
                case RECALLED -> "recalled";
            };
        }
        return entry.event() instanceof stillroom.formulary.batch.BatchEvent.Filled ? "filled" : "logged";
    }

    private static String title(BatchWork work) {
        return work.batch().code() + ": fill and release";
    }
}
