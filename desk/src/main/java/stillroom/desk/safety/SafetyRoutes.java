package stillroom.desk.safety;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.safety.SafetyPage.Asked;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.judgement.safety.OwnExposure;
import stillroom.formulary.judgement.safety.SafetyInput;
import stillroom.formulary.judgement.safety.SafetyTable;

/** Exposure and margins of a version: the table for the assessor, and what is entered for it. */
public final class SafetyRoutes {
    private static final String VERSION = "/products/{product}/versions/{version}";

    private SafetyRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(VERSION + "/safety", request -> show(desk, request));
        routes.get(VERSION + "/safety.pdf", request -> print(desk, request));
        routes.get(VERSION + "/safety/{substance}", request -> ask(desk, request));
        routes.post(VERSION + "/safety/{substance}", request -> save(desk, request));
        routes.post(VERSION + "/exposure", request -> saveExposure(desk, request));
    }

    private static void show(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        desk.pages().show(request, "safety/safety.jte", page(desk, request, of, Optional.empty(), stored(desk, of)));
    }

    private static void print(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        byte[] file = Sheets.set(desk.pages(), "sheets/safety.jte", SafetySheet.of(desk, of));
        Sheets.answer(request, file, of.about() + " exposure and margins");
    }

    private static void ask(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        String substance = request.pathParam("substance");
        SafetyInput input =
                SafetyBook.of(desk.ledger()).substances().read(substance).orElse(SafetyInput.NOTHING);
        Asked asked = new Asked(substance, name(of, substance), new Typed(SafetyForm.values(input), List.of()));
        desk.pages().show(request, "safety/safety.jte", page(desk, request, of, Optional.of(asked), stored(desk, of)));
    }

    private static void save(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        String substance = request.pathParam("substance");
        Input input = Input.of(request);
        Optional<SafetyInput> read = SafetyForm.substance(input);
        if (read.isEmpty()) {
            Asked asked = new Asked(substance, name(of, substance), input.typed());
            desk.pages()
                    .showAgain(
                            request,
                            "safety/safety.jte",
                            page(desk, request, of, Optional.of(asked), stored(desk, of)));
            return;
        }
        name(of, substance);
        if (read.get().isEmpty()) {
            SafetyBook.of(desk.ledger()).substances().remove(substance);
        } else {
            SafetyBook.of(desk.ledger()).substances().write(substance, read.get());
        }
        request.redirect(of.path() + "/safety?did=saved", HttpStatus.SEE_OTHER);
    }

    private static void saveExposure(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        Input input = Input.of(request);
        Optional<OwnExposure> read = SafetyForm.exposure(input);
        if (!input.isSound()) {
            desk.pages()
                    .showAgain(request, "safety/safety.jte", page(desk, request, of, Optional.empty(), input.typed()));
            return;
        }
        String key = SafetyBook.key(of.product());
        read.ifPresentOrElse(
                exposure -> SafetyBook.of(desk.ledger()).exposures().write(key, exposure),
                () -> SafetyBook.of(desk.ledger()).exposures().remove(key));
        request.redirect(of.path() + "/safety?did=saved", HttpStatus.SEE_OTHER);
    }

    private static Typed stored(Desk desk, Studied of) {
        return new Typed(
                SafetyForm.values(SafetyBook.of(desk.ledger()).exposures().read(SafetyBook.key(of.product()))),
                List.of());
    }

    private static SafetyPage page(Desk desk, Context request, Studied of, Optional<Asked> asked, Typed own) {
        SafetyTable table = SafetyBook.table(desk, of);
        return SafetyView.page(desk.frame(request, "Exposure and margins", Section.PRODUCTS), of, table, asked, own);
    }

    /** The INCI name of a substance of the book. */
    private static String name(Studied of, String substance) {
        return of.book()
                .substance(substance)
                .orElseThrow(() -> new NotFoundResponse("There is no such substance."))
                .inciName();
    }
}
