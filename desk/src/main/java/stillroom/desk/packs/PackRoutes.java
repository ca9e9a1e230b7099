package stillroom.desk.packs;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.pack.PackLot;

/** Containers, their lots, their stock. */
public final class PackRoutes {
    private static final String PATH = "/packs";

    private final Desk desk;
    private final PackShelf shelf;

    private PackRoutes(Desk desk) {
        this.desk = desk;
        this.shelf = new PackShelf(desk);
    }

    public static void add(RoutesConfig routes, Desk desk) {
        PackRoutes packs = new PackRoutes(desk);
        routes.get(PATH, request -> packs.list(request, Typed.NOTHING));
        routes.post(PATH, packs::add);
        routes.get(PATH + "/{name}", request -> packs.one(request, Typed.NOTHING, Typed.NOTHING));
        routes.post(PATH + "/{name}", packs::change);
        routes.post(PATH + "/{name}/lots", packs::receive);
        routes.post(PATH + "/{name}/count", packs::count);
        routes.post(PATH + "/{name}/hold", packs::hold);
    }

    private static String path(String name) {
        return PATH + "/" + URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private void list(Context request, Typed typed) {
        PacksPage page = new PacksPage(
                desk.frame(request, "Containers", Section.SHELF),
                shelf.packs().list().stream().map(this::row).toList(),
                typed);
        request.html(desk.pages().render("packs/packs.jte", page));
    }

    private PacksPage.Row row(Pack pack) {
        int there = shelf.lotsOf(pack).stream().mapToInt(shelf::onHand).sum();
        String brim = pack.capacityMillilitres()
                .map(ml -> ", " + ml.toPlainString() + " ml to the brim")
                .orElse("");
        return new PacksPage.Row(pack.name(), path(pack.name()), pack.material() + brim, Integer.toString(there));
    }

    private void add(Context request) {
        Input input = Input.of(request);
        String name = input.text("name");
        if (shelf.packs().read(name).isPresent()) {
            input.refuse("name", "Another bears this name.");
        }
        Optional<Pack> pack = PackForm.pack(input, name);
        if (pack.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            list(request, input.typed());
            return;
        }
        shelf.packs().write(name, pack.get());
        request.redirect(path(name) + "?did=added", HttpStatus.SEE_OTHER);
    }

    private Pack pack(Context request) {
        return shelf.packs()
                .read(request.pathParam("name"))
                .orElseThrow(() -> new NotFoundResponse("No container bears this name."));
    }

    private void one(Context request, Typed fresh, Typed count) {
        Pack pack = pack(request);
        one(request, pack, new Typed(PackForm.fields(pack), List.of()), fresh, count);
    }

    private void one(Context request, Pack pack, Typed facts, Typed fresh, Typed count) {
        PacksPage.One page = new PacksPage.One(
                desk.frame(request, pack.name(), Section.SHELF),
                pack.name(),
                path(pack.name()),
                facts,
                fresh,
                count,
                desk.today().toString(),
                desk.ledger().settings().read().currency(),
                shelf.lotsOf(pack).stream().map(this::lot).toList());
        request.html(desk.pages().render("packs/pack.jte", page));
    }

    private PacksPage.Lot lot(PackLot lot) {
        String from = (lot.supplier() + " " + lot.supplierLot()).strip();
        return new PacksPage.Lot(
                lot.code(),
                lot.received() + " received " + Format.day(lot.receivedOn())
                        + (from.isEmpty() ? "" : " from " + from)
                        + lot.each().map(each -> ", " + each.shown() + " each").orElse("")
                        + (lot.note().isBlank() ? "" : ". " + lot.note()),
                Integer.toString(shelf.onHand(lot)),
                lot.held(),
                shelf.onHand(lot) < 0,
                shelf.countsOf(lot).stream()
                        .map(count -> Format.moment(count.at(), desk.zone()) + ", " + count.by() + ": " + count.found()
                                + " found, book off by " + count.correction() + ", " + count.reason())
                        .toList());
    }

    private void change(Context request) {
        Pack pack = pack(request);
        Input input = Input.of(request);
        Optional<Pack> changed = PackForm.pack(input, pack.name());
        if (changed.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            one(request, pack, input.typed(), Typed.NOTHING, Typed.NOTHING);
            return;
        }
        shelf.packs().write(pack.name(), changed.get());
        request.redirect(path(pack.name()) + "?did=saved", HttpStatus.SEE_OTHER);
    }

    private void receive(Context request) {
        Pack pack = pack(request);
        Input input = Input.of(request);
        if (shelf.lots().read(input.text("code")).isPresent()) {
            input.refuse("code", "Another lot of containers bears this code.");
        }
        Optional<PackLot> lot = PackForm.lot(input, pack, desk.today());
        if (lot.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            one(request, input.typed(), Typed.NOTHING);
            return;
        }
        shelf.lots().write(lot.get().code(), lot.get());
        request.redirect(path(pack.name()) + "?did=added", HttpStatus.SEE_OTHER);
    }

    private PackLot lot(Input input) {
        return shelf.lots()
                .read(input.text("lot"))
                .orElseThrow(() -> new NotFoundResponse("There is no such lot of containers."));
    }

    private void count(Context request) {
        Pack pack = pack(request);
        Input input = Input.of(request);
        Optional<Integer> found = input.whole("found", "The number", 0, 10_000_000);
        if (found.isEmpty() && !input.hasProblem("found")) {
            input.refuse("found", "How many are there?");
        }
        String by = input.required("by", "Who counted");
        String reason = input.required("reason", "Why the book was off");
        if (!input.isSound() || found.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            one(request, Typed.NOTHING, input.typed());
            return;
        }
        shelf.count(lot(input), found.get(), by, reason);
        request.redirect(path(pack.name()) + "?did=counted", HttpStatus.SEE_OTHER);
    }

    private void hold(Context request) {
        Pack pack = pack(request);
        Input input = Input.of(request);
        PackLot lot = lot(input);
        shelf.lots().write(lot.code(), lot.holding(!lot.held()));
        request.redirect(path(pack.name()) + "?did=saved", HttpStatus.SEE_OTHER);
    }
}
