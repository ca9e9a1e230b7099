package stillroom.desk.workshop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.ledger.backup.Backup;
import stillroom.ledger.backup.Backups;
import stillroom.ledger.workshop.Workshop;

/** The workshop's own page: settings, copies, and the end of a demonstration. */
public final class WorkshopRoutes {
    private final Desk desk;
    private final WorkshopView view;

    private WorkshopRoutes(Desk desk) {
        this.desk = desk;
        this.view = new WorkshopView(desk);
    }

    public static void add(RoutesConfig routes, Desk desk) {
        WorkshopRoutes workshop = new WorkshopRoutes(desk);
        routes.get("/workshop", workshop::show);
        routes.post("/workshop", workshop::change);
        routes.post("/workshop/backup", workshop::backUp);
        routes.post("/workshop/restore", workshop::putBack);
        routes.post("/workshop/begin", workshop::begin);
        BalanceRoutes.add(routes, desk);
        ToleranceRoutes.add(routes, desk);
        MeterRoutes.add(routes, desk);
    }

    private Workshop settings() {
        return desk.ledger().settings().read();
    }

    private Typed fields() {
        return new Typed(SettingsForm.fields(settings()), List.of());
    }

    private void show(Context request) {
        desk.pages().show(request, "workshop/workshop.jte", view.page(request, fields(), Typed.NOTHING, ""));
    }

    private void change(Context request) {
        Input input = Input.of(request);
        Optional<Workshop> changed = SettingsForm.read(input, settings().demonstration());
        if (changed.isEmpty()) {
            answer(request, 422, input.typed(), Typed.NOTHING, "");
        } else if (stored(changed.get(), input.text("seen"))) {
            request.redirect("/workshop?did=saved", HttpStatus.SEE_OTHER);
        } else {
            answer(
                    request,
                    409,
                    input.typed(),
                    Typed.NOTHING,
                    "The workshop was changed from elsewhere while you were editing. What you typed is still here and nothing was overwritten; save again if yours is right.");
        }
    }

    private boolean stored(Workshop changed, String seen) {
        return desk.ledger().together(() -> {
            boolean fresh = WorkshopView.mark(settings()).equals(seen);
            if (fresh) {
                desk.ledger().settings().write(changed);
            }
            return fresh;
        });
    }

    private void backUp(Context request) {
        backups().write(LocalDateTime.now(desk.clock()));
        request.redirect("/workshop?did=copied-data#copies", HttpStatus.SEE_OTHER);
    }

    private Backups backups() {
        return new Backups(desk.workspace().folder());
    }

    /** Only copies of the list can be named, so that no path comes in from outside. */
    private void putBack(Context request) {
        Backup copy = backups()
                .named(Input.of(request).text("copy"))
                .orElseThrow(() -> new NotFoundResponse("There is no such copy in the folder for copies."));
        desk.workspace().putBack(copy.file());
        request.redirect("/workshop?did=put-back#copies", HttpStatus.SEE_OTHER);
    }

    /** Only a demonstration can be set aside here: a real workshop is not put away by a button. */
    private void begin(Context request) {
        Input input = Input.of(request);
        if (!settings().demonstration()) {
            input.refuse("sure", "This is not the demonstration workshop, so it stays in place.");
        } else if (!input.has("sure")) {
            input.refuse("sure", "Tick the sentence above if you mean it.");
        }
        if (!input.isSound()) {
            answer(request, 422, fields(), input.typed(), "");
            return;
        }
        desk.workspace().beginAfresh(desk.now());
        request.redirect("/workshop?did=begun", HttpStatus.SEE_OTHER);
    }

    private void answer(Context request, int status, Typed typed, Typed begin, String conflict) {
        request.status(status);
        request.html(desk.pages().render("workshop/workshop.jte", view.page(request, typed, begin, conflict)));
    }
}
