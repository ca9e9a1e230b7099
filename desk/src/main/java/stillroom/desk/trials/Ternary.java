package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Input;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.trial.MixtureFit;

/** A fit over three lines of the maker's choice: the estimate, and beside it how sure it is. */
final class Ternary {
    private static final int STEPS = 5;
    private static final int LONGEST = 24;

    private final TrialSet set;
    private final List<Weighed> weighed;
    private final Pictures pictures;
    private final int[] axes;

    Ternary(TrialSet set, List<Weighed> weighed, Input input) {
        this.set = set;
        this.weighed = weighed;
        this.pictures = new Pictures(set);
        this.axes = axes(set.components().size(), input);
    }

    /** Three different lines, the first ones where the address names none or one twice. */
    private static int[] axes(int components, Input input) {
        int[] axes = {0, 1, 2};
        for (int corner = 0; corner < 3 && components >= 3; corner++) {
            axes[corner] = input.whole(List.of("top", "right", "left").get(corner), "The line", 1, components)
                            .orElse(corner + 1)
                    - 1;
        }
        boolean different = axes[0] != axes[1] && axes[1] != axes[2] && axes[0] != axes[2];
        return different ? axes : new int[] {0, 1, 2};
    }

    /** Which lines there are to choose from; none where there are only three. */
    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < set.components().size() && set.components().size() > 3; i++) {
            choices.add(
                    new Choice(Integer.toString(i + 1), set.components().get(i).name()));
        }
        return choices;
    }

    List<String> chosen() {
        return List.of("" + (axes[0] + 1), "" + (axes[1] + 1), "" + (axes[2] + 1));
    }

    /** @param through the mixture found best, or the middle */
    Optional<ResultsPage.Ternary> of(MixtureFit fit, double[] through) {
        return set.components().size() < 3
                ? Optional.empty()
                : TernaryPlane.through(fit.region(), axes, through).map(plane -> drawn(fit, plane));
    }

    private ResultsPage.Ternary drawn(MixtureFit fit, TernaryPlane plane) {
        boolean sure = Double.isFinite(fit.halfWidth(plane.held()));
        return new ResultsPage.Ternary(
                corners(plane),
                held(plane),
                surface(plane, 8, fit::at),
                sure ? Optional.of(surface(plane, 5, fit::halfWidth)) : Optional.empty(),
                mark(plane, plane.held(), "the mixture found best, or the middle of the region"),
                runs(plane),
                numbers(fit, plane));
    }

    private static ResultsPage.Surface surface(TernaryPlane plane, int bands, ToDoubleFunction<double[]> height) {
        Contours contours = new Contours(plane, bands, height);
        return new ResultsPage.Surface(contours.cells(), contours.lines(), contours.bands());
    }

    private List<ResultsPage.Corner> corners(TernaryPlane plane) {
        List<ResultsPage.Corner> corners = new ArrayList<>();
        for (int corner = 0; corner < 3; corner++) {
            String name = set.components().get(axes[corner]).name();
            corners.add(new ResultsPage.Corner(
                    name,
                    name.length() > LONGEST ? name.substring(0, LONGEST - 1).strip() + "\u2026" : name,
                    pictures.percent(plane.lower(corner) + plane.free()),
                    pictures.percent(plane.lower(corner)),
                    ticks(plane, corner)));
        }
        return corners;
    }

    /** Quarters of the way from the side opposite to the corner, on the side on which the corner's percent is read. */
    private List<Axes.Tick> ticks(TernaryPlane plane, int corner) {
        List<Axes.Tick> ticks = new ArrayList<>();
        for (int quarter = 1; quarter <= 3; quarter++) {
            double share = quarter / 4.0;
            double a = corner == 0 ? share : corner == 1 ? 1 - share : 0;
            double b = corner == 0 ? 0 : corner == 1 ? share : 1 - share;
            ticks.add(new Axes.Tick(
                    TernaryPlane.figure(TernaryPlane.x(a, b)),
                    TernaryPlane.figure(TernaryPlane.y(a)),
                    pictures.percent(plane.lower(corner) + share * plane.free())));
        }
        return ticks;
    }

    /** All that the picture does not vary, in words. */
    private String held(TernaryPlane plane) {
        List<String> all = pictures.mixture(plane.held());
        List<String> others = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (i != axes[0] && i != axes[1] && i != axes[2]) {
                others.add(all.get(i));
            }
        }
        return String.join(", ", others);
    }

    private static ResultsPage.Mark mark(TernaryPlane plane, double[] point, String what) {
        double a = plane.share(0, point);
        double b = plane.share(1, point);
        return new ResultsPage.Mark(
                TernaryPlane.figure(TernaryPlane.x(a, b)), TernaryPlane.figure(TernaryPlane.y(a)), what);
    }

    private List<ResultsPage.Mark> runs(TernaryPlane plane) {
        return weighed.stream()
                .map(one -> mark(
                        plane,
                        one.fractions().stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray(),
                        "run " + one.run().order() + (one.asWeighed() ? ", as weighed" : ", as planned")))
                .toList();
    }

    private List<ResultsPage.Row> numbers(MixtureFit fit, TernaryPlane plane) {
        List<ResultsPage.Row> rows = new ArrayList<>();
        for (int i = STEPS; i >= 0; i--) {
            for (int k = STEPS - i; k >= 0; k--) {
                double[] point = plane.point((double) i / STEPS, (double) k / STEPS);
                if (plane.allows(point)) {
                    rows.add(new ResultsPage.Row(
                            pictures.percent(point[axes[0]]) + " / " + pictures.percent(point[axes[1]]) + " / "
                                    + pictures.percent(point[axes[2]]),
                            List.of(
                                    Words.figure(fit.at(point)),
                                    BestMixture.between(fit.at(point), fit.halfWidth(point)))));
                }
            }
        }
        return rows;
    }
}
