package stillroom.desk.sheets;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.labels.LabelRoutes;
import stillroom.desk.labels.LabelView;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.desk.trace.Impact;
import stillroom.desk.trace.TraceRoutes;
import stillroom.formulary.batch.Batch;
import stillroom.ledger.workshop.Workshop;

/** The printed sheets, as PDF files. */
public final class SheetRoutes {
    private SheetRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/products/{product}/versions/{version}/label.pdf", request -> versionLabel(desk, request));
        routes.get("/batches/{batch}/label.pdf", request -> batchLabel(desk, request));
        routes.get("/batches/{id}/record.pdf", request -> record(desk, request));
        routes.get("/trace.pdf", request -> trace(desk, request));
    }

    private static void record(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        BatchRecord record = new RecordSheet(work).record();
        byte[] file = Sheets.set(desk.pages(), "sheets/record.jte", record);
        Sheets.answer(request, file, "batch record " + work.batch().code());
    }

    private static void trace(Desk desk, Context request) {
        Impact impact = TraceRoutes.impact(desk, request)
                .orElseThrow(() -> new NotFoundResponse("Nothing here bears this name."));
        Workshop workshop = desk.ledger().settings().read();
        String printed = Format.moment(desk.now(), desk.zone());
        ImpactSheet sheet = new ImpactSheet(
                impact,
                printed,
                (workshop.name().isBlank() ? "" : workshop.name() + " · ") + "Trace of " + impact.about()
                        + " · printed " + printed,
                workshop.demonstration());
        Sheets.answer(request, Sheets.onOnePage(desk.pages(), "sheets/trace.jte", sheet), "trace " + impact.about());
    }

    private static void versionLabel(Desk desk, Context request) {
        LabelView view = LabelView.find(desk, Desk.id(request, "product"), (int) Desk.id(request, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of this product."));
        label(desk, request, view, "");
    }

    private static void batchLabel(Desk desk, Context request) {
        Batch batch = LabelRoutes.batch(desk, request);
        label(desk, request, LabelRoutes.viewOf(desk, batch), batch.code());
    }

    private static void label(Desk desk, Context request, LabelView view, String batchCode) {
        byte[] file = label(desk, view, batchCode)
                .orElseThrow(() -> new BadRequestResponse("This text does not fit on "
                        + view.sheet().widthMillimetres() + " by "
                        + view.sheet().heightMillimetres()
                        + " mm in letters that may be that small. Choose a larger label, or a folded one."));
        Sheets.answer(request, file, "label " + batchCode);
    }

    /** The label as PDF; empty where its text does not fit on it. */
    public static Optional<byte[]> label(Desk desk, LabelView view, String batchCode) {
        boolean demonstration = desk.ledger().settings().read().demonstration();
        return new LabelSetter(desk.pages(), Judgement.letterHeights())
                .set(view.label(batchCode), view.sheet(), demonstration);
    }
}
