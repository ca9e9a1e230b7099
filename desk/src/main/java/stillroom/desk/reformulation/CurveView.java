package stillroom.desk.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.formulary.reformulation.Answer;
import stillroom.formulary.reformulation.TradeOff;

/** Places the trade-off curve in its picture: change to the right, cost upwards. */
final class CurveView {
    private static final double LEFT = 60;
    private static final double WIDTH = 550;
    private static final double TOP = 20;
    private static final double HEIGHT = 230;

    private CurveView() {}

    static AnewPage.Curve of(List<TradeOff> curve) {
        if (curve.isEmpty()) {
            return new AnewPage.Curve(List.of(), "");
        }
        double lowCost = curve.stream().mapToDouble(TradeOff::cost).min().orElse(0);
        double highCost = curve.stream().mapToDouble(TradeOff::cost).max().orElse(1);
        double highChange = curve.stream().mapToDouble(TradeOff::change).max().orElse(1);
        List<AnewPage.Point> points = new ArrayList<>();
        for (TradeOff point : curve) {
            double x = LEFT + WIDTH * (highChange > 0 ? point.change() / highChange : 0);
            double y = TOP + HEIGHT * (highCost > lowCost ? (highCost - point.cost()) / (highCost - lowCost) : 0.5);
            points.add(new AnewPage.Point(
                    Format.figure(point.cost(), 3), Format.figure(point.change(), 1), place(x), place(y), with(point)));
        }
        String line = points.stream().map(point -> point.x() + "," + point.y()).collect(Collectors.joining(" "));
        return new AnewPage.Curve(points, line);
    }

    private static String place(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String with(TradeOff point) {
        String names = point.answer().changes().stream()
                .filter(change -> change.before() == 0)
                .map(Answer.Change::name)
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "the same materials" : names;
    }
}
