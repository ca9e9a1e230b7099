package stillroom.desk.batches.units;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Transfer;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.concern.Concern;

/** Stops, units, samples, complaints and documents of a batch. */
public final class UnitsRoutes {
    private static final String PATH = "/batches/{id}/units";
    private static final String TEMPLATE = "batches/units/units.jte";

    private UnitsRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH, request -> take(desk, request));
        routes.post("/batches/{id}/documents", request -> attach(desk, request));
        routes.get("/batches/{id}/documents/{digest}", request -> document(desk, request));
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        desk.pages()
                .show(
                        request,
                        TEMPLATE,
                        new UnitsView(work).page(desk.frame(request, title(work), Section.BATCHES), Optional.empty()));
    }

    private static void take(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        LogPost.Outcome outcome = new LogPost(work, input).take(() -> new ConcernReader(input, desk.today()).event());
        answer(request, work, input, outcome);
    }

    private static void answer(Context request, BatchWork work, Input input, LogPost.Outcome outcome) {
        if (outcome.entry().isPresent()) {
            String did = outcome.entry().get().event() instanceof BatchEvent.Decided decided
                    ? decided.decision().name().toLowerCase(java.util.Locale.ROOT)
                    : "logged";
            request.redirect(work.path() + "/units?did=" + did, HttpStatus.SEE_OTHER);
            return;
        }
        Desk desk = work.desk();
        desk.pages()
                .showAgain(
                        request,
                        TEMPLATE,
                        new UnitsView(work).page(desk.frame(title(work), Section.BATCHES), Optional.of(input)));
    }

    private static void attach(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        Optional<UploadedFile> file = Transfer.sent(request, "file");
        LogPost.Outcome outcome =
                desk.ledger().together(() -> new LogPost(work, input).take(() -> attached(desk, input, file)));
        answer(request, work, input, outcome);
    }

    private static Optional<BatchEvent> attached(Desk desk, Input input, Optional<UploadedFile> file) {
        if (!input.isSound()) {
            return Optional.empty();
        }
        if (file.isEmpty()) {
            return input.refuse("file", "Choose a file that holds something.");
        }
        byte[] bytes = Transfer.bytes(file.get());
        String name = file.get().filename();
        String digest = desk.ledger().attachments().put(name, bytes);
        return Optional.of(new BatchEvent.Concerned(new Concern.Attached(name, digest, bytes.length)));
    }

    private static void document(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        String digest = request.pathParam("digest");
        String name = work.state().concerns().attached().stream()
                .map(entry -> entry.concern())
                .filter(one -> one.digest().equals(digest))
                .map(Concern.Attached::name)
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("This batch has no such document."));
        byte[] bytes = desk.ledger()
                .attachments()
                .get(digest)
                .orElseThrow(() -> new NotFoundResponse("The document is not in the data file any more."));
        Transfer.handBack(request, name, bytes);
    }

    private static String title(BatchWork work) {
        return work.batch().code() + ": units and stops";
    }
}
