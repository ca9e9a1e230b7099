package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.Blending;
import stillroom.science.trial.FitAnswer;
import stillroom.science.trial.Fitting;
import stillroom.science.trial.MixtureFit;
import stillroom.science.trial.Optimum;
import stillroom.science.trial.TrialRun;

/** Fits the responses of a set and puts the results page together. */
final class Results {
    private final TrialSet set;
    private final List<Weighed> weighed;
    private final Input input;
    private final Blending blending;
    private final Fitting.Selection selection;
    private final Map<TrialSet.Response, FitAnswer> answers = new LinkedHashMap<>();

    Results(TrialSet set, List<Weighed> weighed, Input input) {
        this.set = set;
        this.weighed = weighed.stream()
                .sorted(Comparator.comparingInt(one -> one.run().order()))
                .toList();
        this.input = input;
        this.blending = input.choice("model", "The model", Blending.class)
                .orElse(Blending.valueOf(set.design().model()));
        this.selection = input.choice("selection", "The selection", Fitting.Selection.class)
                .orElse(Fitting.Selection.NONE);
        set.responses().forEach(response -> answers.put(response, answer(response)));
    }

    private FitAnswer answer(TrialSet.Response response) {
        List<TrialRun> runs =
                weighed.stream().map(one -> one.trial(set, response.name())).toList();
        return Fitting.fit(Region.of(set), Region.model(set, blending), runs, selection);
    }

    TrialSet.Response chosen() {
        String name = input.text("response");
        return set.responses().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElse(set.responses().get(0));
    }

    Optional<MixtureFit> fit() {
        return fits(chosen());
    }

    private Optional<MixtureFit> fits(TrialSet.Response response) {
        return java.util.Objects.requireNonNull(answers.get(response))
                .match(fitted -> Optional.of(fitted.fit()), no -> Optional.empty());
    }

    Optional<BestMixture> best() {
        Map<TrialSet.Response, MixtureFit> fits = new LinkedHashMap<>();
        set.responses().forEach(response -> fits(response).ifPresent(fit -> fits.put(response, fit)));
        return BestMixture.of(set, fits);
    }

    /** Where the model of the chosen response is least sure. */
    Optional<Optimum.Best> leastSure() {
        return fit().filter(one -> Double.isFinite(one.halfWidth(centre(one, Optional.empty()))))
                .map(Optimum::worthAnotherRun);
    }

    ResultsPage page(Frame frame) {
        TrialSet.Response response = chosen();
        Optional<MixtureFit> fit = fit();
        Optional<BestMixture> best = best();
        Optional<Optimum.Best> worth = leastSure();
        Pictures pictures = new Pictures(set);
        Ternary ternary = new Ternary(set, weighed, input);
        Optional<FitTables> tables = fit.map(one -> new FitTables(set, one));
        return new ResultsPage(
                frame,
                set,
                TrialBook.mark(set),
                response,
                new ResultsPage.Asked(responses(), blending.name(), selection.name()),
                said(pictures),
                tables.map(FitTables::coefficients).orElse(List.of()),
                tables.map(one -> one.figures(response.unit())).orElse(List.of()),
                tables.map(FitTables::variances).orElse(List.of()),
                tables.map(FitTables::verdicts).orElse(List.of()),
                tables.map(one -> one.runs(weighed, response)).orElse(List.of()),
                fit.flatMap(one -> ternary.of(one, centre(one, best))),
                ternary.choices(),
                ternary.chosen(),
                fit.map(one -> new Traces(set, one, response).all(centre(one, best)))
                        .orElse(List.of()),
                best.map(Results::optimum),
                worth.map(one -> pictures.mixture(one.array())).orElse(List.of()),
                worth.flatMap(one -> fit.map(there -> Words.figure(there.halfWidth(one.array()))))
                        .orElse(""));
    }

    private static ResultsPage.Best optimum(BestMixture best) {
        return new ResultsPage.Best(
                best.reached(),
                new Pictures(best.set()).mixture(best.point()),
                best.desirability(),
                best.asGood(),
                best.responses());
    }

    /** What is doubtful about the chosen fit, and what is wanted but cannot be weighed in. */
    private List<String> said(Pictures pictures) {
        FitAnswer answer = java.util.Objects.requireNonNull(answers.get(chosen()));
        List<String> said =
                new ArrayList<>(answer.match(fitted -> fitted.fit().said(), FitAnswer.NotYet::reasons).stream()
                        .map(pictures::named)
                        .toList());
        for (TrialSet.Response other : set.responses()) {
            if (other.aim() != TrialSet.Aim.NONE
                    && !other.equals(chosen())
                    && fits(other).isEmpty()) {
                said.add(other.name()
                        + " is wanted but cannot be fitted yet: the best mixture below does not weigh it in.");
            }
        }
        said.addAll(tests());
        return said;
    }

    /** What runs that are alone on their day say of the fit, which rests on the others. */
    private List<String> tests() {
        return fit().map(fit -> fit.taken().alone().stream()
                        .map(place -> test(fit, weighed.get(place)))
                        .toList())
                .orElse(List.of());
    }

    private String test(MixtureFit fit, Weighed one) {
        TrialRun run = one.trial(set, chosen().name());
        double foretold = fit.at(run.point());
        double half = fit.singleHalfWidth(run.point());
        double measured = run.response().orElseThrow();
        String said = "Run " + one.run().order() + " is alone on day " + run.block()
                + " and not in the fit: it tests it. Foretold for one beaker: " + BestMixture.between(foretold, half)
                + "; measured: " + Words.figure(measured) + ".";
        boolean agrees = Math.abs(measured - foretold) <= half;
        return !Double.isFinite(half)
                ? said
                : said
                        + (agrees
                                ? " It agrees."
                                : " It does not agree: that day differs from the others, or the model does not hold there.");
    }

    private List<Choice> responses() {
        return set.responses().stream()
                .map(one -> new Choice(one.name(), one.name()))
                .toList();
    }

    private static double[] centre(MixtureFit fit, Optional<BestMixture> best) {
        double[] middle = fit.region().polytope().centroid();
        return best.map(BestMixture::point)
                .orElse(Arrays.copyOf(middle, middle.length + fit.model().processes()));
    }
}
