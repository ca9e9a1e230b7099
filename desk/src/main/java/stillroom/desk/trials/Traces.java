package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.Polytope;
import stillroom.science.trial.MixtureFit;

/** The response while one line, or one setting, changes: all pictures on one scale, so that they may be compared by eye. */
final class Traces {
    private static final int POINTS = 21;

    private final TrialSet set;
    private final MixtureFit fit;
    private final TrialSet.Response response;

    Traces(TrialSet set, MixtureFit fit, TrialSet.Response response) {
        this.set = set;
        this.fit = fit;
        this.response = response;
    }

    /**
     * What was reckoned along one way.
     *
     * @param here where the mixture stands that the way goes through
     */
    private record Way(String name, String across, double here, double[] at, double[] estimate, double[] half) {
        double low() {
            double low = Double.POSITIVE_INFINITY;
            for (int k = 0; k < at.length; k++) {
                low = Math.min(low, estimate[k] - half[k]);
            }
            return low;
        }

        double high() {
            double high = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < at.length; k++) {
                high = Math.max(high, estimate[k] + half[k]);
            }
            return high;
        }
    }

    /** Each component against all others in their proportions (Cox's direction), then each setting, through a mixture. */
    List<ResultsPage.Trace> all(double[] through) {
        List<Way> ways = new ArrayList<>();
        Polytope body = fit.region().polytope();
        int q = set.components().size();
        for (int i = 0; i < q; i++) {
            if (through[i] < 1 - 1e-9) {
                ways.add(component(body, through, i));
            }
        }
        for (int k = 0; k < set.variables().size(); k++) {
            ways.add(setting(through, k));
        }
        double low = ways.stream().mapToDouble(Way::low).min().orElse(0);
        double high = ways.stream().mapToDouble(Way::high).max().orElse(1);
        return ways.stream().map(way -> drawn(way, low, high)).toList();
    }

    private Way component(Polytope body, double[] through, int component) {
        int q = set.components().size();
        double[] mixture = java.util.Arrays.copyOf(through, q);
        double[] direction = new double[q];
        double[] back = new double[q];
        for (int i = 0; i < q; i++) {
            direction[i] = i == component ? 1 : -mixture[i] / (1 - mixture[component]);
            back[i] = -direction[i];
        }
        double from = -body.reach(mixture, back);
        double to = body.reach(mixture, direction);
        String name = set.components().get(component).name();
        Way way = way(name, "% of the formula", through[component] * set.share());
        for (int k = 0; k < POINTS; k++) {
            double step = from + (to - from) * k / (POINTS - 1);
            double[] point = through.clone();
            for (int i = 0; i < q; i++) {
                point[i] += step * direction[i];
            }
            reckon(way, k, point[component] * set.share(), point);
        }
        return way;
    }

    private Way setting(double[] through, int variable) {
        int q = set.components().size();
        TrialSet.Variable one = set.variables().get(variable);
        Way way = way(one.name(), one.name(), Region.actual(one, through[q + variable]));
        for (int k = 0; k < POINTS; k++) {
            double[] point = through.clone();
            point[q + variable] = -1 + 2.0 * k / (POINTS - 1);
            reckon(way, k, Region.actual(one, point[q + variable]), point);
        }
        return way;
    }

    private static Way way(String name, String across, double here) {
        return new Way(name, across, here, new double[POINTS], new double[POINTS], new double[POINTS]);
    }

    private void reckon(Way way, int k, double at, double[] point) {
        way.at()[k] = at;
        way.estimate()[k] = fit.at(point);
        double half = fit.halfWidth(point);
        way.half()[k] = Double.isFinite(half) ? half : 0;
    }

    private ResultsPage.Trace drawn(Way way, double low, double high) {
        Axes axes = Axes.plain(way.at()[0], way.at()[POINTS - 1], low, high);
        StringBuilder line = new StringBuilder();
        StringBuilder upper = new StringBuilder();
        StringBuilder under = new StringBuilder();
        List<ResultsPage.Row> numbers = new ArrayList<>();
        for (int k = 0; k < POINTS; k++) {
            double at = way.at()[k];
            line.append(axes.spot(at, way.estimate()[k])).append(' ');
            upper.append(axes.spot(at, way.estimate()[k] + way.half()[k])).append(' ');
            under.insert(0, axes.spot(at, way.estimate()[k] - way.half()[k]) + " ");
            if (k % 5 == 0) {
                numbers.add(new ResultsPage.Row(
                        Words.figure(at),
                        List.of(
                                Words.figure(way.estimate()[k]),
                                way.half()[k] > 0
                                        ? BestMixture.between(way.estimate()[k], way.half()[k])
                                        : "not known")));
            }
        }
        return new ResultsPage.Trace(
                way.name(),
                axes,
                line.toString().strip(),
                (upper.toString() + under).strip(),
                axes.x(way.here()),
                way.across(),
                numbers);
    }

    String up() {
        return TrialPage.head(response);
    }
}
