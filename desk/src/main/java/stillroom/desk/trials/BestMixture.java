package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.trial.MixtureFit;
import stillroom.science.trial.Optimum;
import stillroom.science.trial.Wish;

/**
 * The mixture that is best for all responses for which something is wanted, how sure that is, and which others may be as good.
 *
 * @param set of trials
 * @param wanted the fit of each response that takes part
 * @param best mixture found
 */
record BestMixture(TrialSet set, Map<TrialSet.Response, MixtureFit> wanted, Optimum.Best best) {
    private static final int TRIED = 4000;

    /** Empty where nothing is wanted, or nothing that is wanted can be fitted. */
    static Optional<BestMixture> of(TrialSet set, Map<TrialSet.Response, MixtureFit> fits) {
        Map<TrialSet.Response, MixtureFit> wanted = new LinkedHashMap<>();
        fits.forEach((response, fit) -> {
            if (response.aim() != TrialSet.Aim.NONE) {
                wanted.put(response, fit);
            }
        });
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        List<Optimum.Wanted> all = new ArrayList<>();
        wanted.forEach((response, fit) -> all.add(new Optimum.Wanted(fit, wish(response))));
        return Optional.of(new BestMixture(
                set, wanted, Optimum.desirable(Region.of(set), set.variables().size(), all)));
    }

    private static Wish wish(TrialSet.Response one) {
        return new Wish(Wish.Aim.valueOf(one.aim().name()), one.low(), one.target(), one.high(), 1);
    }

    double[] point() {
        return best.array();
    }

    /** Whether any mixture gives at least something of all that is wanted. */
    boolean reached() {
        return overall(point(), 0) > 0;
    }

    /** In words: how good it is, and how good it is for certain. */
    String desirability() {
        double least = overall(point(), 1);
        return Words.figure(overall(point(), 0))
                + (Double.isFinite(least) ? ", at least " + Words.figure(least) + " within the 95 % intervals" : "");
    }

    /** Geometric mean of the desirabilities; with doubt 1 each estimate is taken where its interval is worst. */
    private double overall(double[] at, double doubt) {
        double product = 1;
        for (Map.Entry<TrialSet.Response, MixtureFit> one : wanted.entrySet()) {
            Wish wish = wish(one.getKey());
            double estimate = one.getValue().at(at);
            double half = doubt == 0 ? 0 : doubt * one.getValue().halfWidth(at);
            double worst = Math.min(wish.desirability(estimate - half), wish.desirability(estimate + half));
            product *= Math.min(worst, wish.desirability(estimate));
        }
        return Math.pow(product, 1.0 / wanted.size());
    }

    /** Per response: estimate, interval of the mean, interval of a single beaker, unit. */
    List<ResultsPage.Row> responses() {
        List<ResultsPage.Row> rows = new ArrayList<>();
        wanted.forEach((response, fit) -> rows.add(new ResultsPage.Row(
                response.name(),
                List.of(
                        Words.figure(fit.at(point())),
                        between(fit.at(point()), fit.halfWidth(point())),
                        between(fit.at(point()), fit.singleHalfWidth(point())),
                        response.unit()))));
        return rows;
    }

    static String between(double estimate, double half) {
        return Double.isFinite(half)
                ? Words.figure(estimate - half) + " to " + Words.figure(estimate + half)
                : "not known";
    }

    /**
     * Each component with the range within which mixtures may be as good: those whose desirability does not fall below what
     * is certain at the best one. Found among many mixtures of the region, the same ones each time.
     */
    List<ResultsPage.Row> asGood() {
        double least = overall(point(), 1);
        if (!reached() || !Double.isFinite(least)) {
            return List.of();
        }
        int q = set.components().size();
        double[] low = point();
        double[] high = point();
        List<double[]> corners = Region.of(set).polytope().vertices();
        SplittableRandom random = new SplittableRandom(1);
        for (int k = 0; k < TRIED; k++) {
            double[] tried = k % 2 == 0 ? mixed(corners, random) : towards(mixed(corners, random), random.nextDouble());
            if (overall(tried, 0) >= least) {
                for (int i = 0; i < q; i++) {
                    low[i] = Math.min(low[i], tried[i]);
                    high[i] = Math.max(high[i], tried[i]);
                }
            }
        }
        return rows(low, high);
    }

    private List<ResultsPage.Row> rows(double[] low, double[] high) {
        Pictures pictures = new Pictures(set);
        List<ResultsPage.Row> rows = new ArrayList<>();
        for (int i = 0; i < set.components().size(); i++) {
            rows.add(new ResultsPage.Row(
                    set.components().get(i).name(),
                    List.of(
                            pictures.percent(point()[i]) + " %",
                            pictures.percent(low[i]) + " to " + pictures.percent(high[i]) + " %")));
        }
        for (int k = 0; k < set.variables().size(); k++) {
            TrialSet.Variable variable = set.variables().get(k);
            double setting = Region.actual(variable, point()[set.components().size() + k]);
            rows.add(new ResultsPage.Row(variable.name(), List.of(Words.figure(setting), "")));
        }
        return rows;
    }

    private double[] mixed(List<double[]> corners, SplittableRandom random) {
        double[] tried = point();
        double[] weights = new double[corners.size()];
        for (int c = 0; c < weights.length; c++) {
            weights[c] = -Math.log(1 - random.nextDouble());
        }
        double sum = Arrays.stream(weights).sum();
        for (int i = 0; i < set.components().size(); i++) {
            tried[i] = 0;
            for (int c = 0; c < weights.length; c++) {
                tried[i] += weights[c] / sum * corners.get(c)[i];
            }
        }
        return tried;
    }

    /** Part of the way from another mixture to the best one, so that its neighbourhood is looked at closely. */
    private double[] towards(double[] other, double part) {
        double[] near = point();
        for (int i = 0; i < near.length; i++) {
            near[i] = part * near[i] + (1 - part) * other[i];
        }
        return near;
    }
}
