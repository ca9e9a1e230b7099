package stillroom.desk.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.formulary.dosing.InBulk;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.dosing.SessionReading;
import stillroom.science.dosing.CurvePoint;
import stillroom.science.dosing.Dosing;
import stillroom.science.dosing.DosingTask;

/**
 * The readings, the fitted curve and the dose, over grams of the strong corrector in the whole bulk.
 *
 * @param grams rising, of curve and readings together, comma-separated [g]
 * @param curve fitted pH at each, empty where only a reading stands; {@code low} and {@code high} its 95 % interval
 * @param sample readings of the sample, carried over to the bulk
 * @param bulk readings of the bulk
 * @param dose where the bulk stands after the proposed addition, empty for none [g]
 * @param rows the curve as a table
 */
public record TitrationChart(
        String grams,
        String curve,
        String low,
        String high,
        String sample,
        String bulk,
        String now,
        String dose,
        String bandLow,
        String bandHigh,
        List<CurveRow> rows) {
    private static final int POINTS = 49;
    private static final int ROW_EVERY = 6;

    public TitrationChart {
        rows = List.copyOf(rows);
    }

    /** One point of the curve in the table. */
    public record CurveRow(String grams, String pH, String range) {}

    /** One place on the axis. */
    private record Point(Optional<CurvePoint> fitted, Optional<Double> sample, Optional<Double> bulk) {}

    /** None where nothing could be fitted, or where acid and base stand in the bulk together. */
    static Optional<TitrationChart> of(
            PhSession session, DosingTask task, DosingAsk ask, Optional<Double> dose, double doseHigh) {
        boolean plain =
                session.now().additions().stream().map(InBulk::materialKey).allMatch(ask.corrector()::equals);
        double poured = session.now().added().doubleValue();
        if (!plain) {
            return Optional.empty();
        }
        TreeMap<Double, Point> points = new TreeMap<>();
        readings(session, ask, points);
        double furthest = points.isEmpty() ? 0 : points.lastKey();
        double to = Math.max(Math.max(furthest * 1.05, (poured + doseHigh) * 1.1), 10 * ask.step());
        DosingTask fromNothing = new DosingTask(
                task.chemistry(),
                task.readings(),
                task.bulkGrams(),
                List.of(),
                task.corrector(),
                task.targetPh(),
                task.halfBand(),
                task.instrument());
        List<CurvePoint> curve = Dosing.curve(fromNothing, to, POINTS);
        if (curve.isEmpty()) {
            return Optional.empty();
        }
        curve.forEach(point -> points.merge(
                point.grams(),
                new Point(Optional.of(point), Optional.empty(), Optional.empty()),
                TitrationChart::joined));
        return Optional.of(drawn(points, curve, ask, poured, dose));
    }

    private static void readings(PhSession session, DosingAsk ask, Map<Double, Point> points) {
        double liquid = session.now().liquidGrams();
        double dilution = session.titration()
                .filter(one -> one.event().corrector().equals(ask.corrector()))
                .map(one -> one.event().dilution().massFraction())
                .orElse(Double.NaN);
        for (SessionReading reading : session.readings()) {
            double there = reading.moment().added().doubleValue()
                    * liquid
                    / reading.moment().liquidGrams();
            double share = reading.takenGrams() / reading.moment().grams();
            double inSample = reading.ofBulk()
                    ? 0
                    : reading.sampleGrams().doubleValue()
                            * dilution
                            * liquid
                            / (reading.moment().liquidGrams() * share);
            Point point = reading.ofBulk()
                    ? new Point(Optional.empty(), Optional.empty(), Optional.of(reading.pH()))
                    : new Point(Optional.empty(), Optional.of(reading.pH()), Optional.empty());
            if (Double.isFinite(there + inSample)) {
                points.merge(there + inSample, point, TitrationChart::joined);
            }
        }
    }

    private static Point joined(Point one, Point other) {
        return new Point(
                one.fitted().or(other::fitted),
                one.sample().or(other::sample),
                one.bulk().or(other::bulk));
    }

    private static TitrationChart drawn(
            Map<Double, Point> points, List<CurvePoint> curve, DosingAsk ask, double poured, Optional<Double> dose) {
        double target = ask.target().orElse(7.0);
        List<CurveRow> rows = new ArrayList<>();
        for (int i = 0; i < curve.size(); i += ROW_EVERY) {
            CurvePoint point = curve.get(i);
            rows.add(new CurveRow(
                    Format.figure(point.grams(), 2),
                    Format.figure(point.pH(), 2),
                    Format.range(point.low(), point.high(), 2)));
        }
        return new TitrationChart(
                points.keySet().stream().map(TitrationChart::said).collect(Collectors.joining(",")),
                line(points, point -> point.fitted().map(CurvePoint::pH)),
                line(points, point -> point.fitted().map(CurvePoint::low)),
                line(points, point -> point.fitted().map(CurvePoint::high)),
                line(points, Point::sample),
                line(points, Point::bulk),
                said(poured),
                dose.map(grams -> said(poured + grams)).orElse(""),
                said(target - ask.halfBand()),
                said(target + ask.halfBand()),
                rows);
    }

    private static String line(Map<Double, Point> points, Function<Point, Optional<Double>> value) {
        return points.values().stream()
                .map(point -> value.apply(point).map(TitrationChart::said).orElse(""))
                .collect(Collectors.joining(","));
    }

    private static String said(double value) {
        return Double.toString(Math.round(value * 1e6) / 1e6);
    }
}
