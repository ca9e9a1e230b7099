package stillroom.desk.materials;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.store.Saved;

/** The shelf: the list of materials, their cards and the form of a card. */
public final class MaterialRoutes {
    private final Desk desk;

    private MaterialRoutes(Desk desk) {
        this.desk = desk;
    }

    public static void add(RoutesConfig routes, Desk desk) {
        MaterialRoutes shelf = new MaterialRoutes(desk);
        routes.get(
                "/materials",
                request -> desk.pages().show(request, "materials/shelf.jte", ShelfList.page(desk, request)));
        routes.get("/materials/new", shelf::askNew);
        routes.post("/materials/new", shelf::add);
        routes.post("/materials/new/rows", shelf::newRows);
        routes.get("/materials/{key}", shelf::show);
        routes.get("/materials/{key}/edit", shelf::askChange);
        routes.post("/materials/{key}/edit", shelf::change);
        routes.post("/materials/{key}/edit/rows", shelf::changedRows);
    }

    private void show(Context request) {
        MaterialBook book = desk.ledger().materials().book();
        desk.pages().show(request, "materials/card.jte", CardView.page(desk, request, card(book, request), book));
    }

    private static Material card(MaterialBook book, Context request) {
        String key = request.pathParam("key");
        return book.material(key)
                .orElseThrow(() -> new NotFoundResponse("There is no material \"" + key + "\" on the shelf."));
    }

    private Material card(Context request) {
        return card(desk.ledger().materials().book(), request);
    }

    private void askNew(Context request) {
        String name = request.queryParam("name");
        Typed empty = new Typed(CardFields.empty(name == null ? "" : name), List.of());
        desk.pages().show(request, "materials/edit.jte", EditView.of(desk).adding(empty));
    }

    private void add(Context request) {
        Input input = Input.of(request);
        EditView view = EditView.of(desk);
        String key = Slug.free(input.text("name"), this::isTaken);
        Optional<CardReader.Read> read = new CardReader(input, view.inci()).read(key, desk.today());
        if (read.isEmpty()) {
            desk.pages().showAgain(request, "materials/edit.jte", view.adding(input.typed()));
            return;
        }
        Saved<Material> saved = store(read.get());
        String savedKey = saved.match(Material::key, Material::key);
        request.redirect(path(savedKey) + "?did=added", HttpStatus.SEE_OTHER);
    }

    /** "new" is an address of its own. */
    private boolean isTaken(String key) {
        return key.equals("new")
                || desk.ledger().materials().book().material(key).isPresent();
    }

    private void askChange(Context request) {
        Material card = card(request);
        EditView view = EditView.of(desk);
        Typed fields = new Typed(CardFields.of(card, view.inci()), List.of());
        desk.pages().show(request, "materials/edit.jte", view.changing(card, fields, ""));
    }

    private void change(Context request) {
        Material card = card(request);
        Input input = Input.of(request);
        EditView view = EditView.of(desk);
        Optional<CardReader.Read> read = new CardReader(input, view.inci()).read(card.key(), desk.today());
        if (read.isEmpty()) {
            desk.pages().showAgain(request, "materials/edit.jte", view.changing(card, input.typed(), ""));
            return;
        }
        store(read.get())
                .match(
                        saved -> {
                            request.redirect(path(saved.key()) + "?did=saved", HttpStatus.SEE_OTHER);
                            return saved;
                        },
                        current -> {
                            showStale(request, input, current);
                            return current;
                        });
    }

    /** All or nothing: a card that came too late brings no substances either. */
    private Saved<Material> store(CardReader.Read read) {
        return desk.ledger().together(() -> {
            Saved<Material> saved = desk.ledger().materials().save(read.card());
            if (saved instanceof Saved.Done<Material>) {
                read.added().forEach(desk.ledger().materials()::save);
            }
            return saved;
        });
    }

    private void showStale(Context request, Input input, Material current) {
        Map<String, String> typed = new HashMap<>(input.typed().values());
        typed.put("revision", Integer.toString(current.revision()));
        String sentence = "This card was saved from elsewhere while you were editing: it now stands at revision "
                + current.revision() + " of " + Format.day(current.revisedOn())
                + ". What you typed is still here and nothing was overwritten. Look at the card as it stands, then save again if yours is right.";
        request.status(409);
        request.html(desk.pages()
                .render(
                        "materials/edit.jte",
                        EditView.of(desk).changing(current, new Typed(typed, List.of()), sentence)));
    }

    private void newRows(Context request) {
        EditView view = EditView.of(desk);
        desk.pages().show(request, "materials/edit.jte", view.adding(turned(request)));
    }

    private void changedRows(Context request) {
        EditView view = EditView.of(desk);
        desk.pages().show(request, "materials/edit.jte", view.changing(card(request), turned(request), ""));
    }

    /** The form with a row more, or with one less. */
    private static Typed turned(Context request) {
        Input input = Input.of(request);
        Map<String, String> typed = input.typed().values();
        String removed = input.text("remove");
        return new Typed(
                removed.matches("\\d{1,3}")
                        ? ConstituentRows.withoutRow(typed, Integer.parseInt(removed))
                        : ConstituentRows.withRow(typed),
                List.of());
    }

    private static String path(String key) {
        return "/materials/" + URLEncoder.encode(key, StandardCharsets.UTF_8);
    }
}
