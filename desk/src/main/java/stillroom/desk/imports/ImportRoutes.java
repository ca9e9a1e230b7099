package stillroom.desk.imports;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;

/** Spreadsheets brought in. */
public final class ImportRoutes {
    private static final String GONE =
            "These files are no longer held. Nothing of them was stored that the report did not say; bring them in once more.";

    private final Desk desk;
    private final Uploads uploads = new Uploads();

    private ImportRoutes(Desk desk) {
        this.desk = desk;
    }

    public static void add(RoutesConfig routes, Desk desk) {
        ImportRoutes imports = new ImportRoutes(desk);
        routes.get("/import", request -> imports.ask(request, "", HttpStatus.OK));
        routes.post("/import", imports::begin);
        routes.get("/import/{upload}", imports::show);
        routes.post("/import/{upload}", imports::act);
        routes.get("/import/{upload}/sheets/{sheet}", imports::showSheet);
        routes.post("/import/{upload}/sheets/{sheet}", imports::decide);
    }

    private void ask(Context request, String problem, HttpStatus status) {
        String pasted = problem.isEmpty() ? "" : FilesSent.pasted(request);
        BeginPage page = new BeginPage(desk.frame(request, "Bring in spreadsheets", Section.PRODUCTS), problem, pasted);
        request.status(status).html(desk.pages().render("imports/begin.jte", page));
    }

    private void begin(Context request) {
        FilesSent sent = FilesSent.of(request);
        if (!sent.problem().isEmpty()) {
            ask(request, sent.problem(), HttpStatus.UNPROCESSABLE_CONTENT);
            return;
        }
        Upload upload = uploads.begin(sent.files(), CardNames.of(desk.ledger()));
        boolean one = !upload.isWorking()
                && upload.sheets().size() == 1
                && upload.refused().isEmpty();
        request.redirect("/import/" + upload.id() + (one ? "/sheets/1" : ""), HttpStatus.SEE_OTHER);
    }

    private Upload upload(Context request) {
        return uploads.upload(request.pathParam("upload")).orElseThrow(() -> new NotFoundResponse(GONE));
    }

    private void show(Context request) {
        Upload upload = upload(request);
        UploadPage page = UploadPage.of(desk, request, upload);
        desk.pages().show(request, "imports/upload.jte", page);
    }

    private void act(Context request) {
        Upload upload = upload(request);
        String action = Input.of(request).text("do");
        switch (action) {
            case "stop" -> upload.stop();
            case "leave" -> uploads.forget(upload);
            case "store", "store-sound" -> store(upload, upload.sheets(), action.equals("store-sound"));
            default -> throw new NotFoundResponse("There is no such thing to do.");
        }
        request.redirect(action.equals("leave") ? "/import" : "/import/" + upload.id(), HttpStatus.SEE_OTHER);
    }

    private void store(Upload upload, List<HeldSheet> sheets, boolean soundOnly) {
        if (upload.isWorking()) {
            return;
        }
        StoringJob job = StoringJob.of(upload, desk.ledger(), desk.now(), desk.today(), soundOnly);
        if (sheets.size() == 1) {
            job.run(sheets);
        } else {
            uploads.await(() -> job.run(sheets));
        }
    }

    private HeldSheet sheet(Context request, Upload upload) {
        return upload.sheet((int) Math.min(Desk.id(request, "sheet"), Integer.MAX_VALUE))
                .orElseThrow(() -> new NotFoundResponse("There is no such sheet among these files."));
    }

    private void showSheet(Context request) {
        Upload upload = upload(request);
        showSheet(request, upload, sheet(request, upload), List.of(), HttpStatus.OK);
    }

    private void showSheet(Context request, Upload upload, HeldSheet sheet, List<String> problems, HttpStatus status) {
        SheetPage page = SheetPage.of(desk, request, upload, sheet, problems);
        request.status(status).html(desk.pages().render("imports/sheet.jte", page));
    }

    private void decide(Context request) {
        Upload upload = upload(request);
        Decisions decisions = new Decisions(request.formParamMap().entrySet().stream()
                .filter(field ->
                        !field.getValue().isEmpty() && field.getValue().get(0).length() <= Input.LONGEST_TEXT)
                .collect(Collectors.toMap(
                        java.util.Map.Entry::getKey,
                        field -> field.getValue().get(0).strip())));
        CardNames cards = CardNames.of(desk.ledger());
        HeldSheet sheet = sheet(request, upload);
        HeldSheet decided = sheet.decided(Changed.only(decisions, sheet, cards), cards.index());
        upload.replace(decided);
        if (!decisions.of("do").orElse("").equals("store")) {
            showSheet(request, upload, decided, List.of(), HttpStatus.OK);
            return;
        }
        List<String> problems = Obstacles.of(decided, cards);
        if (!problems.isEmpty()) {
            showSheet(request, upload, decided, problems, HttpStatus.UNPROCESSABLE_CONTENT);
            return;
        }
        store(upload, List.of(decided), false);
        request.redirect("/import/" + upload.id(), HttpStatus.SEE_OTHER);
    }
}
