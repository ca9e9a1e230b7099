package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.science.curve.Conditions.Geometry;
import stillroom.science.curve.SaltCurve;
import stillroom.science.curve.SaltPoint;

/** One look at a salt curve: readings and conditions read, the curve fitted, the page put together. */
final class SaltWork {
    static final String NOT_ALLOWED = "Doses lie between 0 and 70 %, viscosities above 0.";

    private final Input input;

    SaltWork(Input input) {
        this.input = input;
    }

    CurvePage page(Frame frame, List<Choice> products) {
        List<SaltPoint> points = points();
        double brought = input.number("brought", "The electrolyte that other materials bring", "0", "30")
                .orElse(0.0);
        Optional<Double> wanted = input.reading("wanted", "The wanted viscosity", "0.000001", "1000000000");
        CurvePage.Shown shown = input.has("readings") && input.isSound()
                ? shown(points, brought, wanted, unit(input.text("geometry").equals(Geometry.FLOW_CUP.name())))
                : CurvePage.Shown.NOTHING;
        return new CurvePage(frame, input.typed(), products, shown);
    }

    /** Of what is read: a viscosity, or with a flow cup a time. */
    static String unit(boolean cup) {
        return cup ? "s" : "mPa s";
    }

    /** What follows from readings that may be compared. */
    static CurvePage.Shown shown(List<SaltPoint> points, double brought, Optional<Double> wanted, String unit) {
        List<String> said = new ArrayList<>();
        List<ResultsPage.Row> rows = new ArrayList<>();
        Optional<SaltCurve> curve = SaltCurve.fit(totals(points, brought));
        if (curve.isEmpty()) {
            said.add("Five readings at four different doses or more are needed, on both sides of the peak.");
        }
        curve.ifPresent(one -> tell(one, new Wish(brought, wanted, unit), said, rows));
        return new CurvePage.Shown(
                said,
                List.of("Figure", "Value", "How sure"),
                rows,
                curve.map(one -> picture(one, totals(points, brought), wanted)));
    }

    private List<SaltPoint> points() {
        List<SaltPoint> points = new ArrayList<>();
        for (double[] pair : Readings.pairs(input, "readings")) {
            if (!allowed(pair[0], pair[1])) {
                input.refuse("readings", NOT_ALLOWED);
            } else {
                points.add(new SaltPoint(pair[0], pair[1]));
            }
        }
        boolean conditions = List.of("instrument", "spindle", "celsius", "age").stream()
                .noneMatch(field -> input.text(field).isEmpty());
        if (!points.isEmpty() && !conditions) {
            input.refuse(
                    "instrument",
                    "Readings are compared only under the same conditions: instrument, spindle and speed, temperature and"
                            + " age of the sample have to be named, one set for all of them.");
        }
        return points;
    }

    static boolean allowed(double dose, double viscosity) {
        return dose >= 0 && dose <= 70 && viscosity > 0;
    }

    private static List<SaltPoint> totals(List<SaltPoint> points, double brought) {
        return points.stream()
                .map(point -> new SaltPoint(point.dose() + brought, point.viscosity()))
                .toList();
    }

    /** What is wanted of a curve; what other materials bring [mass percent]. */
    private record Wish(double brought, Optional<Double> wanted, String unit) {
        String shown(double figure) {
            return Words.figure(figure) + " " + unit;
        }
    }

    private static void tell(SaltCurve curve, Wish wish, List<String> said, List<ResultsPage.Row> rows) {
        rows.add(row("peak at a total of", curve.peakDose(), curve.peakHalfWidth()));
        rows.add(row("of it to be added", curve.peakDose() - wish.brought(), curve.peakHalfWidth()));
        rows.add(new ResultsPage.Row("viscosity at the peak", List.of(wish.shown(curve.peakViscosity()), "")));
        rows.add(new ResultsPage.Row(
                "advice ends at a total of",
                List.of(Format.figure(curve.advisedUpTo(), 2) + " %", "80 % of the peak")));
        rows.add(new ResultsPage.Row(
                "shape",
                List.of(shape(curve.shape()), "of three shapes the one that fits best for what it costs (AICc)")));
        said.addAll(curve.said());
        wish.wanted().ifPresent(viscosity -> said.add(advice(curve, wish, viscosity)));
        said.add("It holds for this formula, at the temperature and age of these readings.");
    }

    private static String advice(SaltCurve curve, Wish wish, double viscosity) {
        double without = curve.at(wish.brought());
        if (wish.brought() < curve.advisedUpTo() && viscosity <= without) {
            return "For " + wish.shown(viscosity) + " none is to be added: without any the curve stands at "
                    + wish.shown(without) + " already.";
        }
        return curve.doseFor(viscosity)
                .map(dose -> String.format(
                        Locale.ROOT,
                        "For %s: a total of %.2f %% (± %.2f), so add %.2f %%. Add 70 %% of it first, then in portions.",
                        wish.shown(viscosity),
                        dose.dose(),
                        dose.halfWidth(),
                        Math.max(0, dose.dose() - wish.brought())))
                .orElseGet(() -> wish.shown(viscosity)
                        + " is not reached on the safe side: advice ends at 80 % of the peak's dose, where it is "
                        + wish.shown(curve.at(curve.advisedUpTo())) + ". More surfactant, or another thickener.");
    }

    private static ResultsPage.Row row(String name, double value, double half) {
        return new ResultsPage.Row(
                name,
                List.of(
                        Format.figure(value, 2) + " %",
                        Double.isFinite(half) ? "± " + Format.figure(half, 2) + " (95 %)" : "interval not known"));
    }

    private static String shape(SaltCurve.Shape shape) {
        return switch (shape) {
            case PARABOLA -> "parabola";
            case BELL -> "bell";
            case SKEWED_BELL -> "bell with a long tail";
        };
    }

    private static CurvePage.Picture picture(SaltCurve curve, List<SaltPoint> points, Optional<Double> wanted) {
        double least = points.stream().mapToDouble(SaltPoint::dose).min().orElse(0);
        double most = Math.max(
                points.stream().mapToDouble(SaltPoint::dose).max().orElse(1),
                Math.min(2 * least + 10, curve.peakDose()));
        double high = Math.max(
                curve.peakViscosity(),
                points.stream().mapToDouble(SaltPoint::viscosity).max().orElse(1));
        Axes axes = Axes.plain(least, most, 0, 1.05 * high);
        StringBuilder line = new StringBuilder();
        List<ResultsPage.Row> numbers = new ArrayList<>();
        for (int k = 0; k <= 60; k++) {
            double dose = least + (most - least) * k / 60;
            line.append(axes.spot(dose, Math.max(0, curve.at(dose)))).append(' ');
            if (k % 6 == 0) {
                numbers.add(new ResultsPage.Row(Format.figure(dose, 2), List.of(Words.figure(curve.at(dose)))));
            }
        }
        return new CurvePage.Picture(
                axes,
                List.of(new CurvePage.Line(line.toString().strip(), "fitted: " + shape(curve.shape()))),
                points.stream()
                        .map(point -> axes.mark(
                                point.dose(),
                                point.viscosity(),
                                Format.figure(point.dose(), 2) + " %: " + Words.figure(point.viscosity())))
                        .toList(),
                flags(curve, axes, wanted),
                numbers);
    }

    /** The peak with its interval, where advice ends, and the dose wanted; what lies outside the picture is left out. */
    private static List<CurvePage.Flag> flags(SaltCurve curve, Axes axes, Optional<Double> wanted) {
        List<CurvePage.Flag> flags = new ArrayList<>();
        double half = Double.isFinite(curve.peakHalfWidth()) ? curve.peakHalfWidth() : 0;
        flag(axes, curve.peakDose(), half, "peak", "peak", flags);
        flag(axes, curve.advisedUpTo(), 0, "stop", "where advice ends (80 % of the peak)", flags);
        wanted.flatMap(curve::doseFor)
                .ifPresent(dose -> flag(
                        axes,
                        dose.dose(),
                        Double.isFinite(dose.halfWidth()) ? dose.halfWidth() : 0,
                        "dose",
                        "dose for the wanted viscosity",
                        flags));
        return flags;
    }

    private static void flag(
            Axes axes, double at, double half, String style, String words, List<CurvePage.Flag> flags) {
        if (at >= axes.left() && at <= axes.right()) {
            flags.add(new CurvePage.Flag(
                    axes.x(at),
                    axes.x(Math.max(axes.left(), at - half)),
                    axes.x(Math.min(axes.right(), at + half)),
                    style,
                    words + ": " + Format.figure(at, 2) + " %"
                            + (half > 0 ? " (\u00b1 " + Format.figure(half, 2) + ")" : "")));
        }
    }
}
