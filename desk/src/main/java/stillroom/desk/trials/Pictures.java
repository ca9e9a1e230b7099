package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.desk.shell.Format;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.Polytope;
import stillroom.science.trial.MixtureFit;

/** Pictures of a fit, each with its numbers. */
final class Pictures {
    private static final int SIDE = 40;
    private static final int BANDS = 8;
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

    private String percent(double fraction) {
        return Format.figure(fraction * set.share(), 2);
    }

    /** The first three components, all others held as in the point given. */
    Optional<ResultsPage.Ternary> ternary(MixtureFit fit, double[] held) {
        if (set.components().size() < 3) {
            return Optional.empty();
        }
        MixtureRegion region = fit.region();
        double rest = held[0] + held[1] + held[2];
        double[] lower = new double[3];
        for (int i = 0; i < 3; i++) {
            lower[i] = region.lower().get(i);
        }
        double free = rest - lower[0] - lower[1] - lower[2];
        if (free <= 1e-9) {
            return Optional.empty();
        }
        Plane plane = new Plane(held, lower, free);
        return Optional.of(drawn(fit, plane));
    }

    /** Three components above their least, sharing what is free. */
    private record Plane(double[] held, double[] lower, double free) {
        double[] point(double a, double b, double c) {
            double[] point = held.clone();
            point[0] = lower[0] + a * free;
            point[1] = lower[1] + b * free;
            point[2] = lower[2] + c * free;
            return point;
        }
    }

    private ResultsPage.Ternary drawn(MixtureFit fit, Plane plane) {
        int q = set.components().size();
        List<double[][]> cells = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < SIDE; i++) {
            for (int k = 0; k < SIDE - i; k++) {
                for (int half = 0; half < (i + k < SIDE - 1 ? 2 : 1); half++) {
                    double[][] corners = half == 0
                            ? new double[][] {{i, k}, {i + 1, k}, {i, k + 1}}
                            : new double[][] {{i + 1, k}, {i + 1, k + 1}, {i, k + 1}};
                    double a = (corners[0][0] + corners[1][0] + corners[2][0]) / 3 / SIDE;
                    double b = (corners[0][1] + corners[1][1] + corners[2][1]) / 3 / SIDE;
                    double[] point = plane.point(a, b, 1 - a - b);
                    if (fit.region().contains(Arrays.copyOf(point, q), 1e-9)) {
                        cells.add(corners);
                        low = Math.min(low, fit.at(point));
                        high = Math.max(high, fit.at(point));
                    }
                }
            }
        }
        double width = high > low ? (high - low) / BANDS : 1;
        List<ResultsPage.Cell> drawn = new ArrayList<>();
        for (double[][] corners : cells) {
            double a = (corners[0][0] + corners[1][0] + corners[2][0]) / 3 / SIDE;
            double b = (corners[0][1] + corners[1][1] + corners[2][1]) / 3 / SIDE;
            int band = (int) Math.max(0, Math.min(BANDS - 1, (fit.at(plane.point(a, b, 1 - a - b)) - low) / width));
            drawn.add(new ResultsPage.Cell(
                    at(corners[0][0] / SIDE, corners[0][1] / SIDE) + " "
                            + at(corners[1][0] / SIDE, corners[1][1] / SIDE) + " "
                            + at(corners[2][0] / SIDE, corners[2][1] / SIDE),
                    band));
        }
        List<String> bands = new ArrayList<>();
        for (int band = 0; band < BANDS && !drawn.isEmpty(); band++) {
            bands.add(Words.figure(low + band * width) + " to " + Words.figure(low + (band + 1) * width));
        }
        return new ResultsPage.Ternary(corners(plane), held(plane), drawn, marks(plane), bands, numbers(fit, plane));
    }

    private static double x(double a, double b) {
        return 40 + 400 * (b + 0.5 * a);
    }

    private static double y(double a) {
        return 30 + 346.4 * (1 - a);
    }

    private static String at(double a, double b) {
        // The first component has the top corner, the second the right one, the third the left one.
        return String.format(Locale.ROOT, "%.1f,%.1f", x(a, b), y(a));
    }

    private List<String> corners(Plane plane) {
        List<String> corners = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            corners.add(set.components().get(i).name() + " " + percent(plane.lower()[i] + plane.free()) + " %");
        }
        return corners;
    }

    private String held(Plane plane) {
        List<String> all = mixture(plane.held());
        return all.size() <= 3 ? "" : String.join(", ", all.subList(3, all.size()));
    }

    private List<ResultsPage.Mark> marks(Plane plane) {
        double a = (plane.held()[0] - plane.lower()[0]) / plane.free();
        double b = (plane.held()[1] - plane.lower()[1]) / plane.free();
        return List.of(new ResultsPage.Mark(
                String.format(Locale.ROOT, "%.1f", x(a, b)),
                String.format(Locale.ROOT, "%.1f", y(a)),
                "the mixture found best, or the middle of the region"));
    }

    private List<ResultsPage.Row> numbers(MixtureFit fit, Plane plane) {
        List<ResultsPage.Row> rows = new ArrayList<>();
        int q = set.components().size();
        int steps = 5;
        for (int i = steps; i >= 0; i--) {
            for (int k = steps - i; k >= 0; k--) {
                double[] point = plane.point((double) i / steps, (double) k / steps, (double) (steps - i - k) / steps);
                if (fit.region().contains(Arrays.copyOf(point, q), 1e-9)) {
                    rows.add(new ResultsPage.Row(
                            percent(point[0]) + " / " + percent(point[1]) + " / " + percent(point[2]),
                            List.of(Words.figure(fit.at(point)), "± " + Words.figure(fit.halfWidth(point)))));
                }
            }
        }
        return rows;
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
