package stillroom.desk.trials;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.trial.TrialSet;

/** What was measured, typed into the table of a set; a form that came too late overwrites nothing. */
final class Entering {
    private static final String LARGE = "1000000000";

    private Entering() {}

    static void enter(Desk desk, Context request) {
        Input input = Input.of(request);
        String key = request.pathParam("key");
        TrialBook book = new TrialBook(desk);
        List<String> stale = desk.ledger().together(() -> {
            TrialSet set = book.one(key);
            List<TrialSet.Run> runs =
                    set.runs().stream().map(run -> entered(set, run, input)).toList();
            boolean late = input.has("mark") && !input.text("mark").equals(TrialBook.mark(set));
            if (late && !set.runs().equals(runs)) {
                return differences(set, runs);
            }
            if (input.isSound()) {
                book.write(set.withRuns(runs));
            }
            return List.<String>of();
        });
        TrialSet now = book.one(key);
        if (!stale.isEmpty() || !input.isSound()) {
            show(desk, request, now, input.typed(), stale);
        } else {
            request.redirect("/trials/" + key + "?did=saved", HttpStatus.SEE_OTHER);
        }
    }

    static void show(Desk desk, Context request, TrialSet set, Typed typed, List<String> stale) {
        Frame frame = desk.frame(request, set.name(), Section.PRODUCTS);
        TrialPage page = TrialPage.of(
                stale.isEmpty() ? frame : frame.withNotice("Not saved: these trials were changed elsewhere meanwhile."),
                set,
                Weighed.of(desk, set),
                typed,
                stale);
        if (!stale.isEmpty()) {
            request.status(HttpStatus.CONFLICT).html(desk.pages().render("trials/trial.jte", page));
        } else if (typed.isSound()) {
            desk.pages().show(request, "trials/trial.jte", page);
        } else {
            desk.pages().showAgain(request, "trials/trial.jte", page);
        }
    }

    private static TrialSet.Run entered(TrialSet set, TrialSet.Run run, Input input) {
        Map<String, Double> measured = new LinkedHashMap<>();
        for (int k = 0; k < set.responses().size(); k++) {
            TrialSet.Response response = set.responses().get(k);
            input.number("m" + run.version() + "-" + k, response.name(), "-" + LARGE, LARGE)
                    .ifPresent(value -> measured.put(response.name(), value));
        }
        List<Double> settings = new ArrayList<>();
        for (int k = 0; k < set.variables().size(); k++) {
            String field = "s" + run.version() + "-" + k;
            settings.add(input.number(field, set.variables().get(k).name(), "-" + LARGE, LARGE)
                    .orElse(run.settings().get(k)));
        }
        String note = input.has("note" + run.version()) ? input.text("note" + run.version()) : run.note();
        return new TrialSet.Run(run.version(), run.order(), run.block(), run.fractions(), settings, measured, note);
    }

    /** What is stored where something else was typed. */
    private static List<String> differences(TrialSet set, List<TrialSet.Run> typed) {
        List<String> differences = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            TrialSet.Run stored = set.runs().get(i);
            Map<String, Double> before = new HashMap<>(stored.measured());
            for (TrialSet.Response response : set.responses()) {
                Double there = before.get(response.name());
                Double here = typed.get(i).measured().get(response.name());
                if (!java.util.Objects.equals(there, here)) {
                    differences.add("run " + stored.order() + ": " + response.name() + " is stored as "
                            + (there == null ? "not measured" : TrialPage.plain(there)));
                }
            }
            if (!stored.settings().equals(typed.get(i).settings())) {
                differences.add("run " + stored.order() + ": the process settings are stored as " + stored.settings());
            }
            if (!stored.note().equals(typed.get(i).note())) {
                differences.add("run " + stored.order() + ": the note is stored as \u201c" + stored.note() + "\u201d");
            }
        }
        return differences;
    }
}
