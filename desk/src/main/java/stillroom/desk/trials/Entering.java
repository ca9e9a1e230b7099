package stillroom.desk.trials;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
        TrialPage page = page(desk, request, set, typed, stale);
        if (!stale.isEmpty()) {
            request.status(HttpStatus.CONFLICT).html(desk.pages().render("trials/trial.jte", page));
        } else if (typed.isSound()) {
            desk.pages().show(request, "trials/trial.jte", page);
        } else {
            desk.pages().showAgain(request, "trials/trial.jte", page);
        }
    }

    static TrialPage page(Desk desk, Context request, TrialSet set, Typed typed, List<String> stale) {
        Frame frame = desk.frame(request, set.name(), Section.PRODUCTS);
        return TrialPage.of(
                stale.isEmpty() ? frame : frame.withNotice("Not saved: these trials were changed elsewhere meanwhile."),
                set,
                Weighed.of(desk, set),
                typed,
                stale);
    }

    /** What is not in the form, such as runs that were added meanwhile, stays as it is stored. */
    private static TrialSet.Run entered(TrialSet set, TrialSet.Run run, Input input) {
        Map<String, Double> measured = new LinkedHashMap<>(run.measured());
        Map<String, List<Double>> scores = new LinkedHashMap<>(run.scores());
        for (int k = 0; k < set.responses().size(); k++) {
            String field = "m" + run.version() + "-" + k;
            if (input.has(field)) {
                read(set.responses().get(k), field, run.order(), input, measured, scores);
            }
        }
        List<Double> settings = new ArrayList<>();
        for (int k = 0; k < set.variables().size(); k++) {
            String field = "s" + run.version() + "-" + k;
            settings.add(input.reading(field, set.variables().get(k).name(), "-" + LARGE, LARGE)
                    .orElse(run.settings().get(k)));
        }
        String note = input.has("note" + run.version()) ? input.text("note" + run.version()) : run.note();
        return new TrialSet.Run(
                run.version(), run.order(), run.block(), run.fractions(), settings, measured, scores, note);
    }

    private static void read(
            TrialSet.Response response,
            String field,
            int order,
            Input input,
            Map<String, Double> measured,
            Map<String, List<Double>> scores) {
        String name = response.name();
        String what = name + " of run " + order;
        measured.remove(name);
        scores.remove(name);
        if (response.panel()) {
            List<Double> given = Scores.read(input, field, what);
            if (!given.isEmpty()) {
                measured.put(name, Scores.mean(given));
            }
            if (given.size() > 1) {
                scores.put(name, given);
            }
        } else {
            input.reading(field, what, "-" + LARGE, LARGE).ifPresent(value -> measured.put(name, value));
        }
    }

    /** What is stored where something else was typed. */
    private static List<String> differences(TrialSet set, List<TrialSet.Run> typed) {
        List<String> differences = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            TrialSet.Run stored = set.runs().get(i);
            for (TrialSet.Response response : set.responses()) {
                String there = TrialPage.shown(stored, response);
                if (!there.equals(TrialPage.shown(typed.get(i), response))) {
                    differences.add("run " + stored.order() + ": " + response.name() + " is stored as "
                            + (there.isEmpty() ? "not measured" : there));
                }
            }
            if (!stored.settings().equals(typed.get(i).settings())) {
                differences.add("run " + stored.order() + ": the process settings are stored as "
                        + stored.settings().stream().map(TrialPage::plain).collect(Collectors.joining(", ")));
            }
            if (!stored.note().equals(typed.get(i).note())) {
                differences.add("run " + stored.order() + ": the note is stored as \u201c" + stored.note() + "\u201d");
            }
        }
        return differences;
    }
}
