package stillroom.desk.files;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.List;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.files.FormulaFilePage.Line;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Transfer;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Phase;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;

/** Formula files: looking at one, storing it, and writing one. */
public final class FormulaFileRoutes {
    private static final int LARGEST = 2_000_001;
    private static final String TEMPLATE = "files/formula.jte";

    private FormulaFileRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/import/formula", request -> desk.pages().show(request, TEMPLATE, empty(desk, request, List.of())));
        routes.post("/import/formula", request -> take(desk, request));
        routes.get("/products/{product}/versions/{version}/formula.json", request -> write(desk, request));
    }

    private static FormulaFilePage empty(Desk desk, Context request, List<String> problem) {
        return new FormulaFilePage(
                desk.frame(request, "A formula file", Section.PRODUCTS), problem, List.of(), "", List.of(), "");
    }

    /** A file is shown first; only its text, sent back with the yes, is stored. */
    private static void take(Desk desk, Context request) {
        String text = request.formParam("text");
        byte[] bytes = text == null
                ? Transfer.sent(request, "file")
                        .map(file -> Transfer.bytes(file, LARGEST))
                        .orElse(new byte[0])
                : text.getBytes(StandardCharsets.UTF_8);
        if (bytes.length == 0) {
            refuse(desk, request, List.of("Choose a file."));
            return;
        }
        FormulaIn read = FormulaIn.read(bytes, desk.ledger().materials().book(), Judgement.rules());
        if (read.ready().isEmpty()) {
            refuse(
                    desk,
                    request,
                    read.problems().stream().map(FileProblem::words).toList());
        } else if (text == null) {
            desk.pages().show(request, TEMPLATE, page(desk, request, read, bytes));
        } else {
            FormulaVersion stored = read.store(desk.ledger(), desk.now());
            request.redirect("/products/" + stored.productId() + "/versions/1?did=added", HttpStatus.SEE_OTHER);
        }
    }

    private static void refuse(Desk desk, Context request, List<String> problem) {
        desk.pages().showAgain(request, TEMPLATE, empty(desk, request, problem));
    }

    private static FormulaFilePage page(Desk desk, Context request, FormulaIn read, byte[] bytes) {
        ReadyFormula ready = read.ready().orElseThrow();
        return new FormulaFilePage(
                desk.frame(request, "A formula file", Section.PRODUCTS),
                List.of(),
                read.remarks().stream().map(FileProblem::words).toList(),
                ready.file().name(),
                ready.formula().phases().stream()
                        .flatMap(phase -> lines(ready, phase).stream())
                        .toList(),
                new String(bytes, StandardCharsets.UTF_8));
    }

    private static List<Line> lines(ReadyFormula ready, Phase phase) {
        return phase.lines().stream()
                .map(line -> new Line(
                        phase.name(),
                        ready.names().getOrDefault(line.id(), line.materialKey()),
                        line.amount()
                                .match(
                                        fixed -> fixed.percent() + " %",
                                        () -> "q.s. to 100",
                                        to -> "about " + to.expected() + " %, up to a reading")))
                .toList();
    }

    private static void write(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        String text = FormulaOut.text(desk.ledger(), of, desk.workspace().starter());
        request.header("Content-Disposition", "attachment; filename=\"" + Sheets.fileName(of.about()) + ".json\"");
        request.contentType("application/json; charset=utf-8").result(text);
    }
}
