package stillroom.desk.pictures;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.util.Optional;
import java.util.UUID;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Transfer;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchEvent;

/** Photographs of a batch: the page, taking one in, and the picture itself. */
public final class PictureRoutes {
    private PictureRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/batches/{id}/pictures", request -> show(desk, request));
        routes.post("/batches/{id}/pictures", request -> take(desk, request));
        routes.get("/batches/{id}/pictures/{sha256}.jpg", request -> picture(desk, request));
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        desk.pages().show(request, "pictures/pictures.jte", page(work, request, Typed.NOTHING));
    }

    private static PicturesPage page(BatchWork work, Context request, Typed typed) {
        return new PicturesPage(
                work.desk().frame(request, work.batch().code() + ", pictures", Section.BATCHES),
                BatchHead.of(work),
                typed,
                UUID.randomUUID().toString(),
                work.who().pours(),
                Shots.of(work));
    }

    private static void take(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        LogPost.Outcome outcome = new LogPost(work, input).take(() -> read(desk, request, input));
        if (outcome.entry().isPresent()) {
            request.redirect(work.path() + "/pictures?did=logged", HttpStatus.SEE_OTHER);
        } else {
            desk.pages().showAgain(request, "pictures/pictures.jte", page(work, request, input.typed()));
        }
    }

    private static Optional<BatchEvent> read(Desk desk, Context request, Input input) {
        String when = input.required("when", "When of the making it was taken");
        Optional<UploadedFile> file = Transfer.sent(request, "picture");
        if (file.isEmpty()) {
            return input.refuse("picture", "Choose a picture.");
        }
        Optional<byte[]> small = Photograph.small(Transfer.bytes(file.get()));
        if (small.isEmpty()) {
            return input.refuse("picture", "This is no picture that can be read here: JPEG and PNG can.");
        }
        if (!input.isSound()) {
            return Optional.empty();
        }
        String digest = desk.ledger().attachments().put("picture.jpg", small.get());
        return Optional.of(new BatchEvent.Pictured(digest, when, input.text("words")));
    }

    /** Only what the log of this batch names is shown. */
    private static void picture(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        String sha256 = request.pathParam("sha256");
        byte[] kept = Optional.of(sha256)
                .filter(asked -> work.log().stream()
                        .anyMatch(entry -> entry.event() instanceof BatchEvent.Pictured picture
                                && picture.attachment().equals(asked)))
                .flatMap(asked -> desk.ledger().attachments().get(asked))
                .orElseThrow(() -> new NotFoundResponse("There is no such picture of this batch."));
        request.header("Cache-Control", "private, max-age=31536000, immutable");
        request.contentType("image/jpeg").result(kept);
    }
}
