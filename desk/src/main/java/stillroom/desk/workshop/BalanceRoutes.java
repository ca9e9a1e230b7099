package stillroom.desk.workshop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BalanceCheck;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.workshop.Equipment;

/** The balances of the workshop, each with a page of its own. */
final class BalanceRoutes {
    private final Desk desk;

    private BalanceRoutes(Desk desk) {
        this.desk = desk;
    }

    static void add(RoutesConfig routes, Desk desk) {
        BalanceRoutes balances = new BalanceRoutes(desk);
        routes.get("/workshop/balances/new", balances::askNew);
        routes.post("/workshop/balances/new", balances::add);
        routes.get("/workshop/balances/{position}", balances::ask);
        routes.post("/workshop/balances/{position}", balances::change);
        routes.post("/workshop/balances/{position}/remove", balances::remove);
        routes.post("/workshop/balances/{position}/check", balances::check);
    }

    private Equipment equipment() {
        return desk.ledger().equipment();
    }

    private int index(Context request) {
        long position = Desk.id(request, "position");
        if (position < 1 || position > equipment().balances().size()) {
            throw new NotFoundResponse("There is no balance number " + position + ".");
        }
        return (int) position - 1;
    }

    private void askNew(Context request) {
        desk.pages().show(request, "workshop/balance.jte", page("/workshop/balances/new", "", Typed.NOTHING, ""));
    }

    private void ask(Context request) {
        Balance balance = equipment().balances().get(index(request));
        Typed fields = new Typed(BalanceForm.fields(balance), List.of());
        desk.pages().show(request, "workshop/balance.jte", page(request.path(), balance.name(), fields, ""));
    }

    private void add(Context request) {
        Input input = Input.of(request);
        Optional<Balance> balance = BalanceForm.read(input, equipment().balances());
        if (balance.isEmpty()) {
            desk.pages().showAgain(request, "workshop/balance.jte", page(request.path(), "", input.typed(), ""));
            return;
        }
        desk.ledger().together(() -> {
            List<Balance> all = new ArrayList<>(equipment().balances());
            all.add(balance.get());
            equipment().writeBalances(all);
            return all;
        });
        request.redirect("/workshop?did=added", HttpStatus.SEE_OTHER);
    }

    private void change(Context request) {
        int index = index(request);
        Input input = Input.of(request);
        String was = input.text("was");
        List<Balance> others = new ArrayList<>(equipment().balances());
        others.remove(index);
        Optional<Balance> balance = BalanceForm.read(input, others);
        if (balance.isEmpty()) {
            desk.pages().showAgain(request, "workshop/balance.jte", page(request.path(), was, input.typed(), ""));
        } else {
            answer(
                    request,
                    input,
                    stored(
                            index,
                            was,
                            all -> replaced(
                                    all,
                                    index,
                                    balance.get()
                                            .with(
                                                    all.get(index).check(),
                                                    balance.get().live()))));
        }
    }

    /** A check with a reference mass; the balance keeps the last one. */
    private void check(Context request) {
        int index = index(request);
        Input input = Input.of(request);
        Optional<Grams> reference = input.grams("reference", "The reference mass");
        Optional<Grams> shown = input.grams("shown", "What it showed");
        if (reference.map(Grams::isZero).orElse(!input.hasProblem("reference"))) {
            input.refuse("reference", "How much is the reference mass?");
        }
        if (shown.isEmpty() && !input.hasProblem("shown")) {
            input.refuse("shown", "What did the balance show?");
        }
        String by = input.required("by", "Who checked");
        Balance balance = equipment().balances().get(index);
        if (!input.isSound()) {
            Typed fields = new Typed(BalanceForm.fields(balance), List.of());
            request.status(422);
            request.html(desk.pages()
                    .render(
                            "workshop/balance.jte",
                            page(
                                    "/workshop/balances/" + (index + 1),
                                    balance.name(),
                                    fields,
                                    "",
                                    input.typed(),
                                    "Balance " + balance.name())));
            return;
        }
        BalanceCheck done = new BalanceCheck(desk.today(), reference.orElseThrow(), shown.orElseThrow(), by);
        answer(request, input, stored(index, balance.name(), all -> replaced(all, index, balance.checked(done))));
    }

    private void remove(Context request) {
        int index = index(request);
        Input input = Input.of(request);
        answer(request, input, stored(index, input.text("was"), all -> without(all, index)));
    }

    /** Whether the list was changed; it is not where another balance stands at this place by now. */
    private boolean stored(int index, String was, Function<List<Balance>, List<Balance>> change) {
        return desk.ledger().together(() -> {
            List<Balance> all = equipment().balances();
            boolean fresh = index < all.size() && all.get(index).name().equals(was);
            if (fresh) {
                equipment().writeBalances(change.apply(all));
            }
            return fresh;
        });
    }

    private static List<Balance> replaced(List<Balance> all, int index, Balance balance) {
        List<Balance> changed = new ArrayList<>(all);
        changed.set(index, balance);
        return changed;
    }

    private static List<Balance> without(List<Balance> all, int index) {
        List<Balance> changed = new ArrayList<>(all);
        changed.remove(index);
        return changed;
    }

    private void answer(Context request, Input input, boolean stored) {
        if (stored) {
            request.redirect("/workshop?did=saved", HttpStatus.SEE_OTHER);
            return;
        }
        String now = equipment().balances().get(index(request)).name();
        request.status(409);
        request.html(
                desk.pages()
                        .render(
                                "workshop/balance.jte",
                                page(
                                        "/workshop/balances/" + request.pathParam("position"),
                                        now,
                                        input.typed(),
                                        "The list of balances was changed from elsewhere: \"" + now
                                                + "\" stands here now. Nothing was overwritten; what you typed is still here.")));
    }

    private BalancePage page(String path, String was, Typed typed, String conflict) {
        String title = was.isEmpty() ? "New balance" : "Balance " + was;
        return page(path, was, typed, conflict, Typed.NOTHING, title);
    }

    private BalancePage page(String path, String was, Typed typed, String conflict, Typed checking, String title) {
        Optional<Balance> balance = equipment().balances().stream()
                .filter(one -> one.name().equals(was))
                .findFirst();
        return new BalancePage(
                desk.frame(title, Section.WORKSHOP),
                path,
                was,
                typed,
                conflict,
                balance.map(LeastWeights::of).orElse(List.of()),
                balance.flatMap(one -> one.check().map(check -> LeastWeights.check(one, check)))
                        .orElse(""),
                checking);
    }
}
