package stillroom.desk.labels;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.label.LabelSheet;

/** Labels of versions and of batches. */
public final class LabelRoutes {
    private LabelRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/products/{product}/versions/{version}/label", request -> show(desk, request));
        routes.post("/products/{product}/versions/{version}/label", request -> save(desk, request));
        routes.get("/batches/{batch}/label", request -> showBatch(desk, request));
    }

    private static void show(Desk desk, Context request) {
        LabelView view = view(desk, request);
        Typed typed = new Typed(LabelForm.values(view.sheet()), java.util.List.of());
        desk.pages()
                .show(
                        request,
                        "labels/label.jte",
                        LabelPages.ofVersion(desk, request, view, typed, comingFrom(desk, request, view)));
    }

    private static void save(Desk desk, Context request) {
        LabelView view = view(desk, request);
        Optional<Batch> from = comingFrom(desk, request, view);
        Input input = Input.of(request);
        Optional<LabelSheet> sheet = LabelForm.read(input);
        if (sheet.isEmpty()) {
            desk.pages()
                    .showAgain(
                            request,
                            "labels/label.jte",
                            LabelPages.ofVersion(desk, request, view, input.typed(), from));
            return;
        }
        desk.ledger().labels().write(view.product().id(), view.version().number(), sheet.get());
        String back = from.map(batch -> "&batch=" + batch.id()).orElse("");
        request.redirect(request.path() + "?did=saved" + back, HttpStatus.SEE_OTHER);
    }

    private static void showBatch(Desk desk, Context request) {
        Batch batch = batch(desk, request);
        LabelView view = viewOf(desk, batch);
        BatchState state = BatchState.of(desk.ledger().batches().log(batch.id()));
        desk.pages().show(request, "labels/label.jte", LabelPages.ofBatch(desk, request, view, batch, state));
    }

    /** The batch of this version from whose label one came, to find the way back. */
    private static Optional<Batch> comingFrom(Desk desk, Context request, LabelView view) {
        return Optional.ofNullable(request.queryParam("batch"))
                .filter(id -> id.matches("\\d{1,18}"))
                .flatMap(id -> desk.ledger().batches().batch(Long.parseLong(id)))
                .filter(batch -> batch.productId() == view.product().id()
                        && batch.version().equals(Optional.of(view.version().number())));
    }

    private static LabelView view(Desk desk, Context request) {
        return LabelView.find(desk, Desk.id(request, "product"), (int) Desk.id(request, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of this product."));
    }

    /** The batch in the path of a request. */
    public static Batch batch(Desk desk, Context request) {
        return desk.ledger()
                .batches()
                .batch(Desk.id(request, "batch"))
                .orElseThrow(() -> new NotFoundResponse("There is no such batch."));
    }

    /** The label of the version that a batch was made from. */
    public static LabelView viewOf(Desk desk, Batch batch) {
        return batch.version()
                .flatMap(number -> LabelView.find(desk, batch.productId(), number))
                .orElseThrow(
                        () -> new NotFoundResponse("This batch was weighed free hand. Carry it into a version of the"
                                + " formula first; the label belongs to a version."));
    }
}
