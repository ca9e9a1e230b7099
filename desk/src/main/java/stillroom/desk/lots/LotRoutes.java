package stillroom.desk.lots;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.sheets.Pdf;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.lot.StockedLot;

/** The list of lots and the page of one: its facts, its stock counts. */
public final class LotRoutes {
    private final Desk desk;

    private LotRoutes(Desk desk) {
        this.desk = desk;
    }

    public static void add(RoutesConfig routes, Desk desk) {
        LotRoutes lots = new LotRoutes(desk);
        ReceivingRoutes.add(routes, desk);
        WaterRoutes.add(routes, desk);
        routes.get("/lots", lots::list);
        routes.post("/lots", lots::release);
        routes.get("/lots/{code}", request -> lots.show(request, lots.lot(request)));
        routes.post("/lots/{code}", lots::change);
        routes.post("/lots/{code}/opened", lots::open);
        routes.post("/lots/{code}/count", lots::count);
        routes.get("/lots/{code}/label.pdf", lots::label);
    }

    /** The label of the bottle, 62 by 29 mm. */
    private void label(Context request) {
        Lot lot = lot(request).lot();
        QrCode code = QrCode.of(lot.code());
        LotLabel label = new LotLabel(
                lot.code(),
                desk.ledger()
                        .materials()
                        .book()
                        .material(lot.materialKey())
                        .map(Material::name)
                        .orElse(lot.materialKey()),
                Format.day(lot.receivedOn()),
                lot.expires().map(Format::day).orElse(""),
                lot.opened().map(Format::day).orElse(""),
                code.path(),
                code.size(),
                desk.ledger().settings().read().demonstration());
        byte[] file = Pdf.of(desk.pages().render("lots/label.jte", Map.of("page", label)));
        Sheets.answer(request, file, "lot " + lot.code());
    }

    private LotBook book() {
        return desk.ledger().lots();
    }

    private StockedLot lot(Context request) {
        String code = request.pathParam("code");
        return book().lot(code).orElseThrow(() -> new NotFoundResponse("There is no lot \"" + code + "\"."));
    }

    private void list(Context request) {
        boolean withUsedUp = "yes".equals(request.queryParam("used-up"));
        List<StockedLot> all = book().all();
        List<StockedLot> shown = all.stream()
                .filter(lot -> withUsedUp || lot.lot().state() != Lot.State.USED_UP)
                .toList();
        desk.pages()
                .show(
                        request,
                        "lots/lots.jte",
                        new LotPages.ListPage(
                                desk.frame(request, "Lots", Section.SHELF),
                                new LotRows(desk).of(shown),
                                withUsedUp,
                                all.size() - shown.size(),
                                new LotRows(desk)
                                        .of(all.stream()
                                                .filter(LotRoutes::waits)
                                                .toList())));
    }

    private static boolean waits(StockedLot lot) {
        return lot.lot().state() == Lot.State.QUARANTINE;
    }

    /** Those ticked leave quarantine; one that somebody settled in the meantime stays as it was settled. */
    private void release(Context request) {
        List<String> ticked = Input.of(request).all("lot");
        desk.ledger().together(() -> {
            ticked.stream()
                    .flatMap(code -> book().lot(code).stream())
                    .filter(LotRoutes::waits)
                    .forEach(lot -> book().change(lot.lot().in(Lot.State.RELEASED)));
            return ticked;
        });
        request.redirect(ticked.isEmpty() ? "/lots" : "/lots?did=saved", HttpStatus.SEE_OTHER);
    }

    private void show(Context request, StockedLot lot) {
        desk.pages().show(request, "lots/lot.jte", new LotView(desk, lot).page(request));
    }

    private void change(Context request) {
        StockedLot lot = lot(request);
        Input input = Input.of(request);
        Optional<Lot> changed = new LotReader(input).change(lot.lot());
        if (changed.isEmpty()) {
            again(request, 422, lot, input.typed(), Typed.NOTHING, "");
        } else if (stored(changed.get(), input.text("seen"))) {
            request.redirect("/lots/" + lot.lot().code() + "?did=saved", HttpStatus.SEE_OTHER);
        } else {
            again(
                    request,
                    409,
                    lot(request),
                    input.typed(),
                    Typed.NOTHING,
                    "This lot was changed from elsewhere while you were editing. What you typed is still here and nothing was overwritten. Look at the lot as it stands, then save again if yours is right.");
        }
    }

    private boolean stored(Lot changed, String seen) {
        return desk.ledger().together(() -> {
            boolean fresh = book().lot(changed.code())
                    .map(current -> Seen.of(current.lot()).equals(seen))
                    .orElse(false);
            if (fresh) {
                book().change(changed);
            }
            return fresh;
        });
    }

    /** The bottle is opened today; opening it again changes nothing. */
    private void open(Context request) {
        StockedLot lot = lot(request);
        desk.ledger().together(() -> {
            Lot current = lot(request).lot();
            if (current.opened().isEmpty()) {
                book().change(LotReader.opened(current, desk.today()));
            }
            return current;
        });
        request.redirect("/lots/" + lot.lot().code() + "?did=saved", HttpStatus.SEE_OTHER);
    }

    private void count(Context request) {
        StockedLot lot = lot(request);
        Input input = Input.of(request);
        Optional<Grams> found = input.grams("found", "What was found");
        if (found.isEmpty() && !input.hasProblem("found")) {
            input.refuse("found", "What the bottle holds is missing.");
        }
        String reason = input.required("reason", "The reason");
        String by = input.required("by", "Who counted");
        if (!input.isSound() || found.isEmpty()) {
            Typed facts = new Typed(LotView.fields(lot.lot()), List.of());
            again(request, 422, lot, facts, input.typed(), "");
            return;
        }
        book().countStock(lot.lot().code(), found.get(), reason, desk.now(), by);
        request.redirect("/lots/" + lot.lot().code() + "?did=counted", HttpStatus.SEE_OTHER);
    }

    private void again(Context request, int status, StockedLot lot, Typed facts, Typed count, String conflict) {
        request.status(status);
        request.html(desk.pages().render("lots/lot.jte", new LotView(desk, lot).page(request, facts, count, conflict)));
    }
}
