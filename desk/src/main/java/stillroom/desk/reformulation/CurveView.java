package stillroom.desk.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.formulary.reformulation.Answer;
import stillroom.formulary.reformulation.Measure;
import stillroom.formulary.reformulation.TradeOff;

/** Places the trade-off curve in its picture: the first goal upwards, the second to the right. */
final class CurveView {
    private static final double LEFT = 60;
    private static final double WIDTH = 550;
    private static final double TOP = 36;
    private static final double HEIGHT = 214;

    private CurveView() {}

    static AnewPage.Curve of(Asked.CurveOf of, List<TradeOff> curve, String currency) {
        Span upwards = Span.of(curve, TradeOff::first);
        Span right = Span.of(curve, TradeOff::second);
        List<AnewPage.Point> points = new ArrayList<>();
        for (TradeOff point : curve) {
            points.add(new AnewPage.Point(
                    figure(of.first(), point.first()),
                    figure(of.second(), point.second()),
                    place(LEFT + WIDTH * right.part(point.second())),
                    place(TOP + HEIGHT * (1 - upwards.part(point.first()))),
                    with(point),
                    point.answer().proven()));
        }
        String line = points.stream().map(point -> point.x() + "," + point.y()).collect(Collectors.joining(" "));
        return new AnewPage.Curve(
                of.words(),
                unit(of.first(), currency),
                unit(of.second(), currency),
                points,
                line,
                figure(of.second(), right.low()),
                figure(of.second(), right.high()));
    }

    private static String unit(Measure measure, String currency) {
        return measure == Measure.COST ? measure.unit() + ", " + currency : measure.unit();
    }

    private record Span(double low, double high) {
        static Span of(List<TradeOff> curve, ToDoubleFunction<TradeOff> measure) {
            return new Span(
                    curve.stream().mapToDouble(measure).min().orElse(0),
                    curve.stream().mapToDouble(measure).max().orElse(0));
        }

        double part(double value) {
            return high > low ? (value - low) / (high - low) : 0.5;
        }
    }

    private static String figure(Measure measure, double value) {
        return switch (measure) {
            case COST -> Format.figure(value, 3);
            case COUNT -> Format.figure(value, 0);
            case CHANGE, NATURAL -> Format.figure(value, 1);
        };
    }

    private static String place(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String with(TradeOff point) {
        String names = point.answer().changes().stream()
                .filter(change -> change.before() == 0 && change.after() > 0)
                .map(Answer.Change::name)
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "the same materials" : names;
    }
}
