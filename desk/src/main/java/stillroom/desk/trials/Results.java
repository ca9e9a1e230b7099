package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.Blending;
import stillroom.science.regression.LinearFit;
import stillroom.science.trial.FitAnswer;
import stillroom.science.trial.Fitting;
import stillroom.science.trial.MixtureFit;
import stillroom.science.trial.Optimum;
import stillroom.science.trial.TrialRun;
import stillroom.science.trial.Wish;

/** Fits the responses of a set and puts the results page together. */
final class Results {
    private final TrialSet set;
    private final List<Weighed> weighed;
    private final Input input;
    private final Blending blending;
    private final Fitting.Selection selection;

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
    }

    ResultsPage page(Frame frame) {
        TrialSet.Response response = chosen();
        FitAnswer answer = fit(response);
        Optional<MixtureFit> fit = answer.match(fitted -> Optional.of(fitted.fit()), no -> Optional.empty());
        List<String> reasons = answer.match(fitted -> fitted.fit().said(), FitAnswer.NotYet::reasons);
        Optional<Optimum.Best> best = best();
        Pictures pictures = new Pictures(set);
        Ternary ternary = new Ternary(set, weighed, input);
        return new ResultsPage(
                frame,
                set,
                response,
                responses(),
                blending.name(),
                selection.name(),
                reasons.stream().map(pictures::named).toList(),
                fit.map(this::coefficients).orElse(List.of()),
                fit.map(this::figures).orElse(List.of()),
                fit.map(this::variances).orElse(List.of()),
                fit.map(one -> runs(one, response)).orElse(List.of()),
                fit.flatMap(one -> ternary.of(one, centre(one, best))),
                ternary.choices(),
                ternary.chosen(),
                fit.map(one -> pictures.traces(one, centre(one, best))).orElse(List.of()),
                best.map(one -> optimum(one)).orElse(List.of()),
                best.map(one -> pictures.mixture(one.array())).orElse(List.of()),
                best.map(one -> Words.figure(one.value())).orElse(""),
                fit.map(one -> pictures.mixture(Optimum.worthAnotherRun(one).array()))
                        .orElse(List.of()),
                fit.map(one -> Words.figure(
                                one.halfWidth(Optimum.worthAnotherRun(one).array())))
                        .orElse(""));
    }

    private TrialSet.Response chosen() {
        String name = input.text("response");
        return set.responses().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElse(set.responses().get(0));
    }

    private List<Choice> responses() {
        return set.responses().stream()
                .map(one -> new Choice(one.name(), one.name()))
                .toList();
    }

    private FitAnswer fit(TrialSet.Response response) {
        List<TrialRun> runs =
                weighed.stream().map(one -> one.trial(set, response.name())).toList();
        return Fitting.fit(Region.of(set), Region.model(set, blending), runs, selection);
    }

    private static double[] centre(MixtureFit fit, Optional<Optimum.Best> best) {
        double[] middle = fit.region().polytope().centroid();
        return best.map(Optimum.Best::array)
                .orElse(java.util.Arrays.copyOf(
                        middle, middle.length + fit.model().processes()));
    }

    /** The best mixture for all responses for which something is wanted. */
    private Optional<Optimum.Best> best() {
        List<Optimum.Wanted> wanted = new ArrayList<>();
        for (TrialSet.Response response : set.responses()) {
            if (response.aim() != TrialSet.Aim.NONE) {
                Wish wish = new Wish(
                        Wish.Aim.valueOf(response.aim().name()), response.low(), response.target(), response.high(), 1);
                Optional<MixtureFit> fitted =
                        fit(response).match(one -> Optional.of(one.fit()), no -> Optional.empty());
                fitted.ifPresent(one -> wanted.add(new Optimum.Wanted(one, wish)));
            }
        }
        return wanted.isEmpty()
                ? Optional.empty()
                : Optional.of(Optimum.desirable(Region.of(set), set.variables().size(), wanted));
    }

    private List<ResultsPage.Row> optimum(Optimum.Best best) {
        List<ResultsPage.Row> rows = new ArrayList<>();
        for (TrialSet.Response response : set.responses()) {
            fit(response)
                    .match(
                            fitted -> rows.add(new ResultsPage.Row(
                                    response.name(),
                                    List.of(
                                            Words.figure(fitted.fit().at(best.array())),
                                            "± " + Words.figure(fitted.fit().halfWidth(best.array())),
                                            "± " + Words.figure(fitted.fit().singleHalfWidth(best.array())),
                                            response.unit()))),
                            no -> false);
        }
        return rows;
    }

    private List<ResultsPage.Row> coefficients(MixtureFit fit) {
        List<String> names =
                set.components().stream().map(TrialSet.Component::name).toList();
        List<String> variables =
                set.variables().stream().map(TrialSet.Variable::name).toList();
        List<ResultsPage.Row> rows = new ArrayList<>();
        for (int k = 0; k < fit.fit().coefficients().size(); k++) {
            LinearFit.Coefficient one = fit.fit().coefficients().get(k);
            String name = k < fit.terms().size()
                    ? fit.terms().get(k).name(names, variables)
                    : "day " + (k - fit.terms().size() + 1);
            rows.add(new ResultsPage.Row(
                    name,
                    List.of(
                            Words.figure(one.estimate()),
                            Words.figure(one.standardError()),
                            Words.figure(one.t()),
                            Words.probability(one.p()))));
        }
        return rows;
    }

    private List<ResultsPage.Row> figures(MixtureFit fit) {
        LinearFit one = fit.fit();
        return List.of(
                new ResultsPage.Row("R²", List.of(Words.figure(one.rSquared()))),
                new ResultsPage.Row("adjusted R²", List.of(Words.figure(one.adjustedRSquared()))),
                new ResultsPage.Row("predicted R²", List.of(Words.figure(one.predictedRSquared()))),
                new ResultsPage.Row("scatter (standard deviation)", List.of(Words.figure(one.residualDeviation()))),
                new ResultsPage.Row(
                        "runs, terms",
                        List.of(one.observations() + ", " + one.coefficients().size())));
    }

    private List<ResultsPage.Row> variances(MixtureFit fit) {
        LinearFit one = fit.fit();
        List<ResultsPage.Row> rows = new ArrayList<>();
        rows.add(variance("model", one.regression()));
        rows.add(new ResultsPage.Row(
                "error",
                List.of(
                        Words.figure(one.errorSquares()),
                        String.valueOf(one.errorDegrees()),
                        Words.figure(one.residualDeviation() * one.residualDeviation()),
                        "",
                        "")));
        if (one.pure().degreesOfFreedom() > 0) {
            rows.add(variance("of it lack of fit", one.lackOfFit()));
            rows.add(new ResultsPage.Row(
                    "of it repeats (pure error)",
                    List.of(
                            Words.figure(one.pure().squares()),
                            String.valueOf(one.pure().degreesOfFreedom()),
                            Words.figure(one.pure().squares() / one.pure().degreesOfFreedom()),
                            "",
                            "")));
        }
        rows.add(new ResultsPage.Row(
                "total about the mean",
                List.of(Words.figure(one.totalSquares()), String.valueOf(one.observations() - 1), "", "", "")));
        return rows;
    }

    private static ResultsPage.Row variance(String name, LinearFit.Variance one) {
        return new ResultsPage.Row(
                name,
                List.of(
                        Words.figure(one.squares()),
                        String.valueOf(one.degreesOfFreedom()),
                        Words.figure(one.meanSquare()),
                        Words.figure(one.f()),
                        Words.probability(one.p())));
    }

    private List<ResultsPage.Row> runs(MixtureFit fit, TrialSet.Response response) {
        List<ResultsPage.Row> rows = new ArrayList<>();
        List<Double> studentised = fit.fit().studentisedResiduals();
        int row = 0;
        for (Weighed one : weighed) {
            Double measured = one.run().measured().get(response.name());
            if (measured == null) {
                rows.add(new ResultsPage.Row("run " + one.run().order(), List.of("not measured", "", "", "", "")));
                continue;
            }
            rows.add(new ResultsPage.Row(
                    "run " + one.run().order() + (one.asWeighed() ? "" : " (as planned)"),
                    List.of(
                            Words.figure(measured),
                            Words.figure(fit.fit().fitted().get(row)),
                            Words.figure(fit.fit().residuals().get(row)),
                            Words.figure(studentised.get(row)),
                            Words.figure(fit.fit().leverages().get(row)))));
            row++;
        }
        return rows;
    }
}
