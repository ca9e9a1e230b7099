package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.regression.LinearFit;
import stillroom.science.trial.MixtureFit;

/** The figures of a fit as tables, each with one plain sentence on what it means for the maker. */
final class FitTables {
    private final TrialSet set;
    private final MixtureFit fit;

    FitTables(TrialSet set, MixtureFit fit) {
        this.set = set;
        this.fit = fit;
    }

    /** Estimate, standard error, t, p. */
    List<ResultsPage.Row> coefficients() {
        List<String> names =
                set.components().stream().map(TrialSet.Component::name).toList();
        List<String> variables =
                set.variables().stream().map(TrialSet.Variable::name).toList();
        List<ResultsPage.Row> rows = new ArrayList<>();
        for (int k = 0; k < fit.fit().coefficients().size(); k++) {
            LinearFit.Coefficient one = fit.fit().coefficients().get(k);
            String name = k < fit.terms().size()
                    ? fit.terms().get(k).name(names, variables)
                    : "day " + fit.taken().days().get(k - fit.terms().size());
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

    /** Value, then what it means. */
    List<ResultsPage.Row> figures(String unit) {
        LinearFit one = fit.fit();
        int spare = one.observations() - one.coefficients().size();
        return List.of(
                row(
                        "R²",
                        Words.figure(one.rSquared()),
                        "The share of the differences between the beakers that the model explains; 1 is all of it."),
                row(
                        "adjusted R²",
                        Words.figure(one.adjustedRSquared()),
                        "The same with a price on each term: of two models, the one with the larger figure is the better bargain."),
                row("predicted R²", Words.figure(one.predictedRSquared()), predicted(one)),
                row(
                        "scatter (standard deviation)",
                        (Words.figure(one.residualDeviation()) + " " + unit).strip(),
                        "What the model leaves unexplained: about two of three beakers lie within this much of it."),
                row(
                        "runs, terms",
                        one.observations() + ", " + one.coefficients().size(),
                        spare == 0
                                ? "Beakers measured and figures taken from them: none to spare, so nothing tells how sure it is."
                                : "Beakers measured and figures taken from them: the " + spare
                                        + " to spare tell how sure it is."));
    }

    private static String predicted(LinearFit one) {
        String means = "How well each beaker is foretold by all the others. ";
        double gap = one.rSquared() - one.predictedRSquared();
        if (!Double.isFinite(one.predictedRSquared())) {
            return means + "Not known here: a beaker alone decides a term.";
        }
        if (one.predictedRSquared() < 0) {
            return means + "Below 0: the plain mean of all beakers foretells better.";
        }
        return means
                + (gap > 0.2
                        ? "It is far below R²: part of the fit follows the scatter (0.2 apart is common practice, no source)."
                        : "It is near R²: the model foretells about as well as it fits.");
    }

    /** Squares, degrees, mean square, F, p. */
    List<ResultsPage.Row> variances() {
        LinearFit one = fit.fit();
        List<ResultsPage.Row> rows = new ArrayList<>();
        rows.add(variance("model", one.regression()));
        rows.add(row(
                "error",
                Words.figure(one.errorSquares()),
                String.valueOf(one.errorDegrees()),
                Words.figure(one.residualDeviation() * one.residualDeviation()),
                "",
                ""));
        if (one.pure().degreesOfFreedom() > 0) {
            rows.add(variance("of it lack of fit", one.lackOfFit()));
            rows.add(row(
                    "of it repeats (pure error)",
                    Words.figure(one.pure().squares()),
                    String.valueOf(one.pure().degreesOfFreedom()),
                    Words.figure(one.pure().squares() / one.pure().degreesOfFreedom()),
                    "",
                    ""));
        }
        rows.add(row(
                "total about the mean",
                Words.figure(one.totalSquares()),
                String.valueOf(one.observations() - 1),
                "",
                "",
                ""));
        return rows;
    }

    /** What the analysis of variance says, in sentences. */
    List<String> verdicts() {
        LinearFit one = fit.fit();
        List<String> said = new ArrayList<>();
        if (one.exact()) {
            return List.of("The fit is exact: what is left is the rounding of the reckoning, and is not judged.");
        }
        if (one.errorDegrees() > 0) {
            said.add("Model: "
                    + (one.regression().p() < 0.05
                            ? "the mixture matters; chance alone would hardly do this (p under 0.05)."
                            : "what was varied hardly matters beyond chance (p not under 0.05)."));
        }
        if (one.pure().degreesOfFreedom() == 0) {
            said.add("Lack of fit: not known, because no beaker was made twice on the same day.");
        } else if (one.errorDegrees() > one.pure().degreesOfFreedom()) {
            said.add(
                    "Lack of fit: "
                            + (one.lackOfFit().p() < 0.05
                                    ? "the model misses by more than the repeats scatter: its form is too simple here (p under 0.05)."
                                    : "the model misses by no more than the repeats scatter, as it should (p not under 0.05)."));
        }
        return said;
    }

    /** Measured, fitted, residual, studentised residual, leverage, and what stands out in words. */
    List<ResultsPage.Row> runs(List<Weighed> weighed, TrialSet.Response response) {
        List<ResultsPage.Row> rows = new ArrayList<>();
        List<Double> studentised = fit.fit().studentisedResiduals();
        int at = 0;
        for (int place = 0; place < weighed.size(); place++) {
            Weighed one = weighed.get(place);
            String name = "run " + one.run().order() + (one.asWeighed() ? "" : " (as planned)");
            Double measured = one.run().measured().get(response.name());
            if (measured == null) {
                rows.add(row(name, "not measured", "", "", "", "", "left out"));
                continue;
            }
            if (fit.taken().alone().contains(place)) {
                double foretold = fit.at(one.trial(set, response.name()).point());
                rows.add(row(
                        name,
                        Words.figure(measured),
                        Words.figure(foretold),
                        Words.figure(measured - foretold),
                        "",
                        "",
                        "alone on its day: tests the fit"));
                continue;
            }
            double leverage = fit.fit().leverages().get(at);
            rows.add(row(
                    name,
                    Words.figure(measured),
                    Words.figure(fit.fit().fitted().get(at)),
                    Words.figure(fit.fit().residuals().get(at)),
                    Words.figure(studentised.get(at)),
                    Words.figure(leverage),
                    remark(studentised.get(at), leverage)));
            at++;
        }
        return rows;
    }

    private String remark(double studentised, double leverage) {
        List<String> remarks = new ArrayList<>();
        if (Math.abs(studentised) > fit.fit().outlierLimit()) {
            remarks.add("does not fit the others");
        }
        double mean = (double) fit.fit().coefficients().size() / fit.fit().observations();
        if (leverage > 0.999) {
            remarks.add("alone decides a term");
        } else if (leverage > 2 * mean) {
            remarks.add("decides much alone");
        }
        return String.join(", ", remarks);
    }

    private static ResultsPage.Row variance(String name, LinearFit.Variance one) {
        return row(
                name,
                Words.figure(one.squares()),
                String.valueOf(one.degreesOfFreedom()),
                Words.figure(one.meanSquare()),
                Words.figure(one.f()),
                Words.probability(one.p()));
    }

    private static ResultsPage.Row row(String name, String... cells) {
        return new ResultsPage.Row(name, List.of(cells));
    }
}
