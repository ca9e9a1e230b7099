package stillroom.desk.trials;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.DesignTask;
import stillroom.science.design.Run;
import stillroom.science.mixture.Blending;
import stillroom.science.trial.Optimum;

/** Further runs of a set: those that add most to what is there, as it was weighed, on another day. */
final class Further {
    static final String CHANGED =
            "These trials were changed elsewhere meanwhile; nothing was added. Look at the runs above, then press again.";

    private final Desk desk;

    Further(Desk desk) {
        this.desk = desk;
    }

    void add(Context request) {
        TrialSet set = new TrialBook(desk).one(request.pathParam("key"));
        Input input = Input.of(request);
        boolean late = input.has("mark") && !input.text("mark").equals(TrialBook.mark(set));
        Optional<List<Run>> fresh = late ? Optional.empty() : runs(set, input);
        if (fresh.isPresent() && new Making(desk).extend(TrialRoutes.varied(desk, set.base()), set, fresh.get())) {
            request.redirect("/trials/" + set.key() + "?did=added", HttpStatus.SEE_OTHER);
            return;
        }
        if (late || fresh.isPresent()) {
            input.refuse("more", CHANGED);
            request.status(HttpStatus.CONFLICT);
        } else {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        TrialSet now = new TrialBook(desk).one(set.key());
        request.html(
                desk.pages().render("trials/trial.jte", Entering.page(desk, request, now, input.typed(), List.of())));
    }

    /** One mixture of the results, the best or the least sure, as a further run. */
    void addOne(Context request) {
        TrialSet set = new TrialBook(desk).one(request.pathParam("key"));
        Input input = Input.of(request);
        Results results = new Results(set, Weighed.of(desk, set), input);
        Optional<double[]> point = input.text("at").equals("best")
                ? results.best().map(BestMixture::point)
                : results.leastSure().map(Optimum.Best::array);
        boolean late = !input.text("mark").equals(TrialBook.mark(set));
        if (!late
                && point.isPresent()
                && new Making(desk).extend(TrialRoutes.varied(desk, set.base()), set, List.of(run(set, point.get())))) {
            request.redirect("/trials/" + set.key() + "?did=added", HttpStatus.SEE_OTHER);
            return;
        }
        refuse(request, set, input, late);
    }

    /** The best mixture as a new draft of the version that the trials vary. */
    void takeBest(Context request) {
        TrialSet set = new TrialBook(desk).one(request.pathParam("key"));
        Input input = Input.of(request);
        Optional<BestMixture> best = new Results(set, Weighed.of(desk, set), input).best();
        boolean late = !input.text("mark").equals(TrialBook.mark(set));
        if (late || best.isEmpty()) {
            refuse(request, set, input, late);
            return;
        }
        TrialSet.Base base = set.base();
        Map<String, Percent> percents =
                Making.percents(set, run(set, best.get().point()).fractions());
        int number = desk.ledger()
                .products()
                .newVersion(
                        base.product(),
                        Optional.of(base.version()),
                        TrialRoutes.varied(desk, base).with(percents),
                        "The best mixture of the trials " + set.name() + ".",
                        desk.now())
                .number();
        request.redirect("/products/" + base.product() + "/versions/" + number + "?did=best", HttpStatus.SEE_OTHER);
    }

    private void refuse(Context request, TrialSet set, Input input, boolean late) {
        input.refuse("more", late ? CHANGED : "There is no fit from which a mixture could be taken.");
        request.status(late ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT)
                .html(desk.pages()
                        .render("trials/trial.jte", Entering.page(desk, request, set, input.typed(), List.of())));
    }

    private static Run run(TrialSet set, double[] point) {
        int q = set.components().size();
        List<Double> all = Arrays.stream(point).boxed().toList();
        return new Run(all.subList(0, q), all.subList(q, all.size()), openDay(set));
    }

    /** The newest day of further runs while some of it are still to be made, else the next: one run alone tells only its day. */
    private static int openDay(TrialSet set) {
        int newest = nextDay(set) - 1;
        boolean open = set.runs().stream()
                .anyMatch(run -> run.block() == newest && run.measured().isEmpty());
        return newest > 1 && open ? newest : newest + 1;
    }

    private static int nextDay(TrialSet set) {
        return set.runs().stream().mapToInt(TrialSet.Run::block).max().orElse(0) + 1;
    }

    private Optional<List<Run>> runs(TrialSet set, Input input) {
        int count = input.whole("more", "The number of runs", 1, 50).orElse(0);
        if (count == 0 && input.isSound()) {
            input.refuse("more", "The number of runs is missing.");
        }
        return input.isSound() ? searched(set, count, input) : Optional.empty();
    }

    private Optional<List<Run>> searched(TrialSet set, int count, Input input) {
        List<Run> made = Weighed.of(desk, set).stream()
                .map(one -> one.trial(set, ""))
                .map(run -> new Run(run.fractions(), run.process(), 1))
                .toList();
        DesignTask task = new DesignTask(
                Region.of(set),
                Region.model(set, Blending.valueOf(set.design().model())),
                made.size() + count,
                new DesignTask.Wishes(
                        Kind.valueOf(set.design().criterion()).criterion(),
                        1,
                        0,
                        made,
                        set.design().seed()));
        int day = nextDay(set);
        DesignAnswer answer = Making.search(task);
        answer.match(found -> List.<String>of(), DesignAnswer.Refused::reasons)
                .forEach(sentence -> input.refuse("more", sentence));
        return answer.match(
                found -> Optional.of(found.design().runs().subList(made.size(), made.size() + count).stream()
                        .map(run -> new Run(run.fractions(), run.process(), day))
                        .toList()),
                refused -> Optional.empty());
    }
}
