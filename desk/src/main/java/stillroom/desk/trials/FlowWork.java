package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.science.curve.Conditions.Geometry;
import stillroom.science.curve.FlowCurve;
import stillroom.science.curve.FlowPoint;

/** One look at a flow curve: readings in a defined geometry, models fitted and compared. */
final class FlowWork {
    static final String NOT_DEFINED =
            "A disc spindle or a flow cup has no defined shear rate: its reading is an apparent viscosity at its speed, and no"
                    + " flow model is fitted to it.";
    static final String NOT_ALLOWED = "Shear rates and viscosities lie above 0.";

    private final Input input;

    FlowWork(Input input) {
        this.input = input;
    }

    CurvePage page(Frame frame, List<Choice> products) {
        Optional<Geometry> geometry = input.choice("geometry", "The geometry", Geometry.class);
        List<FlowPoint> points = points();
        geometry.filter(one -> !one.definedShearRate()).ifPresent(one -> input.refuse("geometry", NOT_DEFINED));
        CurvePage.Shown shown = input.has("readings") && input.isSound() ? shown(points) : CurvePage.Shown.NOTHING;
        return new CurvePage(frame, input.typed(), products, shown);
    }

    /** What follows from readings that may be compared. */
    static CurvePage.Shown shown(List<FlowPoint> points) {
        List<FlowCurve> fitted = FlowCurve.fit(points);
        if (fitted.isEmpty()) {
            return new CurvePage.Shown(
                    List.of("Readings at four shear rates or more are needed."), List.of(), Optional.empty());
        }
        String best = "Best by AICc: " + words(fitted.get(0).model())
                + ". Differences in AICc under about 2 decide nothing (common practice, no source).";
        return new CurvePage.Shown(List.of(best), rows(fitted), Optional.of(picture(fitted.get(0), points)));
    }

    private List<FlowPoint> points() {
        List<FlowPoint> points = new ArrayList<>();
        for (double[] pair : Readings.pairs(input, "readings")) {
            if (!(pair[0] > 0) || !(pair[1] > 0)) {
                input.refuse("readings", NOT_ALLOWED);
            } else {
                points.add(new FlowPoint(pair[0], pair[1]));
            }
        }
        return points;
    }

    private static List<ResultsPage.Row> rows(List<FlowCurve> fitted) {
        List<ResultsPage.Row> rows = new ArrayList<>();
        for (FlowCurve curve : fitted) {
            for (int k = 0; k < curve.parameters().size(); k++) {
                rows.add(new ResultsPage.Row(
                        words(curve.model()),
                        List.of(
                                curve.model().names().get(k) + ": "
                                        + Words.figure(curve.parameters().get(k)),
                                k == 0 ? "AICc " + Words.figure(curve.fit().correctedAkaike()) : "")));
            }
        }
        return rows;
    }

    private static String words(FlowCurve.Model model) {
        return switch (model) {
            case POWER_LAW -> "power law";
            case CARREAU -> "Carreau";
            case HERSCHEL_BULKLEY -> "Herschel-Bulkley";
        };
    }

    private static CurvePage.Picture picture(FlowCurve curve, List<FlowPoint> points) {
        double left = points.stream()
                .mapToDouble(point -> Math.log10(point.shearRate()))
                .min()
                .orElse(0);
        double right = points.stream()
                .mapToDouble(point -> Math.log10(point.shearRate()))
                .max()
                .orElse(1);
        double low = points.stream()
                        .mapToDouble(point -> Math.log10(point.viscosity()))
                        .min()
                        .orElse(0)
                - 0.1;
        double high = points.stream()
                        .mapToDouble(point -> Math.log10(point.viscosity()))
                        .max()
                        .orElse(1)
                + 0.1;
        Axes axes = new Axes(left, right, low, high);
        StringBuilder line = new StringBuilder();
        List<ResultsPage.Row> numbers = new ArrayList<>();
        for (int k = 0; k <= 60; k++) {
            double rate = Math.pow(10, left + (right - left) * k / 60);
            double there = Math.max(low, Math.min(high, Math.log10(curve.at(rate))));
            line.append(axes.spot(Math.log10(rate), there)).append(' ');
            if (k % 6 == 0) {
                numbers.add(new ResultsPage.Row(Words.figure(rate), List.of(Words.figure(curve.at(rate)))));
            }
        }
        return new CurvePage.Picture(
                line.toString().strip(),
                points.stream()
                        .map(point -> axes.mark(
                                Math.log10(point.shearRate()),
                                Math.log10(point.viscosity()),
                                Words.figure(point.shearRate()) + " 1/s: " + Words.figure(point.viscosity()) + " Pa s"))
                        .toList(),
                "",
                Words.figure(Math.pow(10, left)) + " 1/s",
                Words.figure(Math.pow(10, right)) + " 1/s",
                Words.figure(Math.pow(10, low)) + " Pa s",
                Words.figure(Math.pow(10, high)) + " Pa s",
                numbers);
    }
}
