package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stillroom.desk.shell.Format;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.Polytope;
import stillroom.science.trial.MixtureFit;

/** Pictures of a fit, each with its numbers. */
final class Pictures {
    private static final int TRACE_POINTS = 21;

    private final TrialSet set;

    Pictures(TrialSet set) {
        this.set = set;
    }

    /** x1, x2 ... replaced by the maker's names. */
    String named(String sentence) {
        String said = sentence;
        for (int i = set.components().size(); i >= 1; i--) {
            said = said.replace("x" + i, set.components().get(i - 1).name());
        }
        for (int k = set.variables().size(); k >= 1; k--) {
            said = said.replace("w" + k, set.variables().get(k - 1).name());
        }
        return said;
    }

    /** A mixture in words: each component in percent of the formula, then the settings. */
    List<String> mixture(double[] point) {
        List<String> words = new ArrayList<>();
        int q = set.components().size();
        for (int i = 0; i < q; i++) {
            words.add(set.components().get(i).name() + " " + percent(point[i]) + " %");
        }
        for (int k = 0; k < set.variables().size(); k++) {
            TrialSet.Variable variable = set.variables().get(k);
            words.add(variable.name() + " " + Words.figure(Region.actual(variable, point[q + k])));
        }
        return words;
    }

    String percent(double fraction) {
        return Format.figure(fraction * set.share(), 2);
    }

    /** Each component against all others in their proportions (Cox's direction), through the point given. */
    List<ResultsPage.Trace> traces(MixtureFit fit, double[] through) {
        List<ResultsPage.Trace> traces = new ArrayList<>();
        Polytope body = fit.region().polytope();
        for (int i = 0; i < set.components().size(); i++) {
            if (through[i] < 1 - 1e-9) {
                traces.add(trace(fit, body, through, i));
            }
        }
        return traces;
    }

    private ResultsPage.Trace trace(MixtureFit fit, Polytope body, double[] through, int component) {
        int q = set.components().size();
        double[] mixture = Arrays.copyOf(through, q);
        double[] direction = new double[q];
        double[] back = new double[q];
        for (int i = 0; i < q; i++) {
            direction[i] = i == component ? 1 : -mixture[i] / (1 - mixture[component]);
            back[i] = -direction[i];
        }
        double from = -body.reach(mixture, back);
        double to = body.reach(mixture, direction);
        double[] estimates = new double[TRACE_POINTS];
        double[] halves = new double[TRACE_POINTS];
        double[] percents = new double[TRACE_POINTS];
        for (int k = 0; k < TRACE_POINTS; k++) {
            double step = from + (to - from) * k / (TRACE_POINTS - 1);
            double[] point = through.clone();
            for (int i = 0; i < q; i++) {
                point[i] += step * direction[i];
            }
            percents[k] = point[component] * set.share();
            estimates[k] = fit.at(point);
            halves[k] = Double.isFinite(fit.halfWidth(point)) ? fit.halfWidth(point) : 0;
        }
        return drawn(set.components().get(component).name(), percents, estimates, halves);
    }

    private static ResultsPage.Trace drawn(String name, double[] percents, double[] estimates, double[] halves) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < percents.length; k++) {
            low = Math.min(low, estimates[k] - halves[k]);
            high = Math.max(high, estimates[k] + halves[k]);
        }
        StringBuilder line = new StringBuilder();
        StringBuilder upper = new StringBuilder();
        StringBuilder under = new StringBuilder();
        List<ResultsPage.Row> numbers = new ArrayList<>();
        for (int k = 0; k < percents.length; k++) {
            double x = 10 + 280.0 * k / (percents.length - 1);
            line.append(spot(x, estimates[k], low, high));
            upper.append(spot(x, estimates[k] + halves[k], low, high));
            under.insert(0, spot(x, estimates[k] - halves[k], low, high));
            if (k % 5 == 0) {
                numbers.add(new ResultsPage.Row(
                        Format.figure(percents[k], 2),
                        List.of(Words.figure(estimates[k]), "± " + Words.figure(halves[k]))));
            }
        }
        return new ResultsPage.Trace(
                name,
                line.toString().strip(),
                (upper.toString() + under).strip(),
                Format.figure(percents[0], 2),
                Format.figure(percents[percents.length - 1], 2),
                Words.figure(low),
                Words.figure(high),
                numbers);
    }

    private static String spot(double x, double value, double low, double high) {
        double height = high > low ? (value - low) / (high - low) : 0.5;
        return String.format(Locale.ROOT, "%.1f,%.1f ", x, 150 - 140 * height);
    }
}
