package stillroom.desk.products;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillroom.desk.products.FormulaPage.Suggestion;
import stillroom.desk.products.PastePage.Row;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.imports.NameIndex;
import stillroom.ledger.store.Saved;

/** Lines out of a spreadsheet into a phase. */
final class PasteRoutes {
    private static final String PASTE = "/products/{product}/versions/{number}/paste";
    private static final int SUGGESTIONS = 2;
    private static final int MOST_LINES = 200;

    private PasteRoutes() {}

    static void add(RoutesConfig routes, Desk desk) {
        routes.get(PASTE, request -> show(request, Editing.of(desk, request), Typed.NOTHING, List.of(), HttpStatus.OK));
        routes.post(PASTE, request -> read(desk, request));
    }

    private static void show(Context request, Editing editing, Typed typed, List<Pasted> pasted, HttpStatus status) {
        PastePage page = new PastePage(
                editing.desk()
                        .frame(
                                request,
                                "Add several lines to " + editing.product().name(),
                                Section.PRODUCTS),
                editing.product(),
                editing.version(),
                typed,
                editing.version().formula().phases().stream()
                        .map(phase -> new Choice(phase.id(), phase.name()))
                        .toList(),
                pasted.stream().map(one -> row(one, editing)).toList());
        request.status(status).html(editing.desk().pages().render("products/paste.jte", page));
    }

    private static Row row(Pasted pasted, Editing editing) {
        String amount = pasted.amount()
                .map(read -> Differences.amount(read, editing.decimals()))
                .orElse("no figure");
        return new Row(
                pasted.name(),
                amount,
                means(pasted, editing.cards()),
                pasted.known(),
                String.join(" ", pasted.doubts()));
    }

    private static String means(Pasted pasted, Cards cards) {
        if (pasted.known()) {
            return cards.name(pasted.materialKey());
        }
        String similar = cards.similar(pasted.name(), SUGGESTIONS).stream()
                .map(card -> new Suggestion(card.key(), cards.name(card.key())))
                .map(Suggestion::name)
                .collect(Collectors.joining(", "));
        return similar.isEmpty() ? "the name is kept as it is" : "meant perhaps " + similar;
    }

    private static void read(Desk desk, Context request) {
        Editing editing = Editing.of(desk, request);
        Input input = Input.of(request);
        int edit = input.whole("edit", "The number of the edit", 0, Integer.MAX_VALUE)
                .orElseThrow(() -> new BadRequestResponse("The form was incomplete, so nothing was changed."));
        NameIndex names = NameIndex.of(
                desk.ledger().materials().book(), desk.ledger().importNames().all());
        List<Pasted> pasted = Pasted.read(input.raw("lines"), editing.cards(), names);
        pasted.forEach(line -> line.problem().ifPresent(sentence -> input.refuse("lines", sentence)));
        if (pasted.isEmpty() || pasted.size() > MOST_LINES) {
            input.refuse("lines", "Put in 1 to " + MOST_LINES + " lines.");
        }
        if (!input.isSound()) {
            show(request, editing, input.typed(), pasted, HttpStatus.UNPROCESSABLE_CONTENT);
        } else if (input.text("do").equals("look")) {
            show(request, editing, input.typed(), pasted, HttpStatus.OK);
        } else {
            add(request, editing, input, pasted, edit);
        }
    }

    private static void add(Context request, Editing editing, Input input, List<Pasted> pasted, int edit) {
        FormulaVersion version = editing.version();
        Formula added = with(editing, input.text("phase"), pasted);
        Saved<FormulaVersion> saved = editing.desk()
                .ledger()
                .products()
                .saveDraft(version.productId(), version.number(), edit, added, version.why());
        if (saved instanceof Saved.Stale<FormulaVersion> stale) {
            input.refuse(
                    "lines",
                    stale.current().kept()
                            ? "This version was kept meanwhile and does not change any more; begin a new one from it."
                            : "The version was changed elsewhere meanwhile. Nothing was added; add them once more.");
            show(request, editing.with(stale.current()), input.typed(), pasted, HttpStatus.CONFLICT);
        } else {
            request.redirect(editing.path() + "?did=added", HttpStatus.SEE_OTHER);
        }
    }

    /** The formula with the lines at the end of a phase; where there is no phase yet, in a first one. */
    private static Formula with(Editing editing, String phaseId, List<Pasted> pasted) {
        Draft draft = editing.stored();
        int number = editing.version().number();
        List<Phase> phases = new ArrayList<>(editing.version().formula().phases());
        if (phases.isEmpty()) {
            phases.add(new Phase(draft.freshId("p", number), "First phase", List.of(), List.of()));
        }
        int place = 0;
        for (int i = 0; i < phases.size(); i++) {
            place = phases.get(i).id().equals(phaseId) ? i : place;
        }
        Phase phase = phases.get(place);
        List<Line> lines = new ArrayList<>(phase.lines());
        int count = 0;
        for (Pasted one : pasted) {
            count++;
            while (draft.ids().contains("i" + number + "x" + count)) {
                count++;
            }
            lines.add(new Line(
                    "i" + number + "x" + count, one.materialKey(), one.amount().orElseThrow(), ""));
        }
        phases.set(place, new Phase(phase.id(), phase.name(), lines, phase.steps()));
        return new Formula(phases);
    }
}
