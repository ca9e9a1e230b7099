package stillroom.desk.products;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stillroom.desk.products.FormulaPage.Stale;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.ledger.formula.ProductShelf;
import stillroom.ledger.store.Saved;

/** The formula editor: each answer to a change is the page as it then stands. */
final class FormulaRoutes {
    private static final String VERSION = "/products/{product}/versions/{number}";

    private FormulaRoutes() {}

    static void add(RoutesConfig routes, Desk desk) {
        routes.get(VERSION, request -> show(desk, request));
        routes.post(VERSION, request -> change(desk, request, draft -> draft));
        routes.post(
                VERSION + "/do/{what}/{on}",
                request -> change(
                        desk,
                        request,
                        draft -> Rearranging.apply(
                                draft, request.pathParam("what"), request.pathParam("on"), number(request))));
        routes.post(
                VERSION + "/use/{line}/{card}", request -> change(desk, request, draft -> use(desk, request, draft)));
        routes.post(VERSION + "/keep", request -> keep(desk, request));
        routes.post(VERSION + "/branch", request -> branch(desk, request));
    }

    private static int number(Context request) {
        return (int) Desk.id(request, "number");
    }

    private static Draft use(Desk desk, Context request, Draft draft) {
        Cards cards = Cards.of(desk.ledger().materials().book());
        String name = cards.name(request.pathParam("card"));
        return draft.with(Draft.line(request.pathParam("line"), "material"), name);
    }

    private static Frame frame(Editing editing, Context request) {
        return editing.desk()
                .frame(
                        request,
                        editing.product().name() + ", version "
                                + editing.version().number(),
                        Section.PRODUCTS);
    }

    private static void show(Desk desk, Context request) {
        Editing editing = Editing.of(desk, request);
        FormulaPage page = FormulaSetting.page(
                editing,
                frame(editing, request),
                editing.version().formula(),
                editing.stored(),
                List.of(),
                Optional.empty());
        desk.pages().show(request, editing.version().kept() ? "products/kept.jte" : "products/formula.jte", page);
    }

    /** What was sent, read against what is stored. */
    private record Sent(Editing editing, Draft draft, DraftReading reading, int edit) {
        static Sent of(Desk desk, Context request, UnaryOperator<Draft> act) {
            Editing editing = Editing.of(desk, request);
            FormulaVersion version = editing.version();
            Input input = Input.of(request);
            Optional<Integer> edit = input.whole("edit", "The number of the edit", 0, Integer.MAX_VALUE);
            Draft draft = act.apply(Draft.of(input).withoutBlanks(version.formula()));
            return new Sent(
                    editing,
                    draft,
                    DraftReading.of(draft, version.formula(), version.why(), editing.cards()),
                    edit.orElseThrow(() -> new BadRequestResponse(
                            "The form was incomplete, so nothing was changed. Open the page again.")));
        }

        boolean changesSomething() {
            FormulaVersion version = editing.version();
            return edit != version.edit()
                    || !reading.formula().equals(version.formula())
                    || !reading.why().equals(version.why());
        }

        Saved<FormulaVersion> save() {
            FormulaVersion version = editing.version();
            if (!version.kept() && !changesSomething()) {
                return new Saved.Done<>(version);
            }
            ProductShelf products = editing.desk().ledger().products();
            return products.saveDraft(version.productId(), version.number(), edit, reading.formula(), reading.why());
        }

        /** The fields as they are shown again. */
        Draft shown() {
            return DraftWriting.of(reading, draft, editing.cards(), editing.decimals());
        }
    }

    private static void change(Desk desk, Context request, UnaryOperator<Draft> act) {
        Sent sent = Sent.of(desk, request, act);
        Saved<FormulaVersion> saved = sent.save();
        if (saved instanceof Saved.Stale<FormulaVersion> stale) {
            showStale(request, sent, stale.current());
        } else if (saved instanceof Saved.Done<FormulaVersion> done
                && !sent.reading().isSound()) {
            showAgain(request, sent, done.value());
        } else {
            boolean byBehaviour = request.header("HX-Request") != null;
            request.redirect(sent.editing().path() + (byBehaviour ? "" : "?did=saved"), HttpStatus.SEE_OTHER);
        }
    }

    private static void showAgain(Context request, Sent sent, FormulaVersion now) {
        Editing editing = sent.editing().with(now);
        editing.desk()
                .pages()
                .showAgain(
                        request,
                        "products/formula.jte",
                        FormulaSetting.page(
                                editing,
                                frame(editing, request),
                                sent.reading().formula(),
                                sent.shown(),
                                sent.reading().problems(),
                                Optional.empty()));
    }

    private static void showStale(Context request, Sent sent, FormulaVersion now) {
        Editing editing = sent.editing().with(now);
        Stale stale = new Stale(Differences.between(now, sent.reading(), editing.cards(), editing.decimals()));
        Frame frame = frame(editing, request)
                .withNotice("Not saved: this version was changed elsewhere meanwhile. What you typed is below.");
        FormulaPage page = FormulaSetting.page(
                editing,
                frame,
                sent.reading().formula(),
                sent.shown(),
                sent.reading().problems(),
                Optional.of(stale));
        request.status(HttpStatus.CONFLICT).html(editing.desk().pages().render("products/formula.jte", page));
    }

    /** Keeps the version with what was just typed; not while something in it cannot be read. */
    private static void keep(Desk desk, Context request) {
        Sent sent = Sent.of(desk, request, draft -> draft);
        if (!sent.reading().isSound()) {
            change(desk, request, draft -> draft);
            return;
        }
        Saved<FormulaVersion> kept = desk.ledger()
                .together(() -> sent.save()
                        .match(
                                done -> desk.ledger().products().keep(done.productId(), done.number(), done.edit()),
                                Saved.Stale::new));
        if (kept instanceof Saved.Stale<FormulaVersion> stale) {
            showStale(request, sent, stale.current());
        } else {
            request.redirect(sent.editing().path() + "?did=kept", HttpStatus.SEE_OTHER);
        }
    }

    /** What was typed begins a version of its own, and the stored one stays as it is. */
    private static void branch(Desk desk, Context request) {
        Sent sent = Sent.of(desk, request, draft -> draft);
        FormulaVersion from = sent.editing().version();
        FormulaVersion branched = desk.ledger()
                .products()
                .newVersion(
                        from.productId(),
                        Optional.of(from.number()),
                        sent.reading().formula(),
                        sent.reading().why(),
                        desk.now());
        request.redirect(
                "/products/" + from.productId() + "/versions/" + branched.number() + "?did=copied",
                HttpStatus.SEE_OTHER);
    }
}
