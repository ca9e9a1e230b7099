package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
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
                    List.of("Readings at four shear rates or more are needed."),
                    List.of(),
                    List.of(),
                    Optional.empty());
        }
        List<String> said = new ArrayList<>();
        said.add("Best by AICc: " + words(fitted.get(0).model()) + ". " + meaning(fitted.get(0)));
        if (fitted.size() > 1 && difference(fitted, fitted.get(1)) < 2) {
            said.add(words(fitted.get(1).model())
                    + " fits about as well: these readings do not decide between the two (differences under about 2 decide"
                    + " nothing; common practice, no source).");
        }
        said.add(
                "AICc weighs how near a curve runs to the readings against how many figures it takes; the lowest is preferred."
                        + " No curve is trusted outside the shear rates that were read.");
        return new CurvePage.Shown(
                said,
                List.of("Model", "Figures", "AICc above the best"),
                rows(fitted),
                Optional.of(picture(fitted, points)));
    }

    private static double difference(List<FlowCurve> fitted, FlowCurve one) {
        return one.fit().correctedAkaike() - fitted.get(0).fit().correctedAkaike();
    }

    private static String above(List<FlowCurve> fitted, FlowCurve one) {
        double difference = difference(fitted, one);
        return Double.isFinite(difference) ? Words.figure(difference) : "too few readings to compare it";
    }

    /** What the maker may read from it. */
    private static String meaning(FlowCurve curve) {
        double index = curve.parameters().get(curve.parameters().size() - 1);
        String thins = index < 0.95
                ? "It thins as it is sheared, the more the further n lies below 1 (n = " + Words.figure(index) + ")."
                : index > 1.05
                        ? "It thickens as it is sheared (n = " + Words.figure(index) + ")."
                        : "It flows much the same at all shear rates (n = " + Words.figure(index) + ").";
        return switch (curve.model()) {
            case POWER_LAW -> thins;
            case CARREAU ->
                "At rest it levels off at " + Words.figure(curve.parameters().get(0)) + " Pa s. " + thins;
            case HERSCHEL_BULKLEY ->
                "It stands still up to a stress of "
                        + Words.figure(curve.parameters().get(0))
                        + " Pa, enough to hold bubbles or grains where it is large. " + thins;
        };
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
            List<String> figures = new ArrayList<>();
            for (int k = 0; k < curve.parameters().size(); k++) {
                figures.add(curve.model().names().get(k) + " "
                        + Words.figure(curve.parameters().get(k)));
            }
            rows.add(new ResultsPage.Row(
                    words(curve.model()), List.of(String.join("; ", figures), above(fitted, curve))));
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

    private static CurvePage.Picture picture(List<FlowCurve> fitted, List<FlowPoint> points) {
        Axes axes = axes(points);
        List<CurvePage.Line> lines = new ArrayList<>();
        List<ResultsPage.Row> numbers = new ArrayList<>();
        for (FlowCurve curve : fitted) {
            StringBuilder line = new StringBuilder();
            for (int k = 0; k <= 60; k++) {
                double at = axes.left() + (axes.right() - axes.left()) * k / 60;
                double fit = Math.log10(curve.at(Math.pow(10, at)));
                line.append(axes.spot(at, Math.max(axes.low(), Math.min(axes.high(), fit))))
                        .append(' ');
            }
            lines.add(new CurvePage.Line(line.toString().strip(), words(curve.model())));
        }
        for (int k = 0; k <= 10; k++) {
            double rate = Math.pow(10, axes.left() + (axes.right() - axes.left()) * k / 10);
            numbers.add(new ResultsPage.Row(
                    Words.figure(rate), List.of(Words.figure(fitted.get(0).at(rate)))));
        }
        List<ResultsPage.Mark> marks = points.stream()
                .map(point -> axes.mark(
                        Math.log10(point.shearRate()),
                        Math.log10(point.viscosity()),
                        Words.figure(point.shearRate()) + " 1/s: " + Words.figure(point.viscosity()) + " Pa s"))
                .toList();
        return new CurvePage.Picture(axes, lines, marks, List.of(), numbers);
    }

    private static Axes axes(List<FlowPoint> points) {
        DoubleSummaryStatistics across = points.stream()
                .mapToDouble(point -> Math.log10(point.shearRate()))
                .summaryStatistics();
        DoubleSummaryStatistics up = points.stream()
                .mapToDouble(point -> Math.log10(point.viscosity()))
                .summaryStatistics();
        return new Axes(across.getMin(), across.getMax(), up.getMin() - 0.1, up.getMax() + 0.1, true);
    }
}
