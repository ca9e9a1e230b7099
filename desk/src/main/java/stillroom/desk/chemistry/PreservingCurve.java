package stillroom.desk.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stillroom.desk.chemistry.PreservingPage.Curve;
import stillroom.desk.chemistry.PreservingPage.OverPh;
import stillroom.desk.chemistry.PreservingPage.Row;
import stillroom.desk.shell.Format;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.evaluation.Preserving.AtPh;
import stillroom.formulary.quantity.Interval;

/** The preservatives over pH as curves and as a table. */
final class PreservingCurve {
    static final double STEP = 0.25;
    private static final double TABLE_EVERY = 0.5;
    private static final double USUAL_LOW = 3;
    private static final double USUAL_HIGH = 8;

    private PreservingCurve() {}

    /** The span to draw: 3 to 8, and half a pH beyond the band where that lies outside. */
    static Interval span(Interval band) {
        double low = Math.min(USUAL_LOW, Math.floor((band.low() - TABLE_EVERY) * 2) / 2);
        double high = Math.max(USUAL_HIGH, Math.ceil((band.high() + TABLE_EVERY) * 2) / 2);
        return new Interval(Math.max(0, low), Math.min(14, high));
    }

    static OverPh of(Preserving preserving) {
        List<AtPh> points = preserving.curve();
        List<String> names = points.isEmpty()
                ? List.of()
                : points.get(0).states().stream().map(PreservativeState::name).toList();
        List<Curve> undissociated = new ArrayList<>();
        List<Curve> free = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            int at = i;
            String name = names.get(i);
            undissociated.add(curve(
                    points,
                    name,
                    "most",
                    i,
                    point -> one(point, at).undissociatedPercent().high()));
            free.add(curve(
                    points,
                    name + ", at most",
                    "most",
                    i,
                    point -> one(point, at).freePercent().high()));
            if (points.stream().noneMatch(point -> one(point, at).freeIsAtMost())) {
                free.add(curve(
                        points,
                        name + ", at least",
                        "least",
                        i,
                        point -> one(point, at).freePercent().low()));
            }
        }
        return new OverPh(
                points.stream().map(point -> PreservingView.plain(point.ph())).collect(Collectors.joining(",")),
                preserving.ph().map(ph -> PreservingView.plain(ph.low())).orElse(""),
                preserving.ph().map(ph -> PreservingView.plain(ph.high())).orElse(""),
                names,
                undissociated,
                free,
                rows(preserving));
    }

    private static PreservativeState one(AtPh point, int at) {
        return point.states().get(at);
    }

    private static Curve curve(List<AtPh> points, String name, String kind, int ink, ToDoubleFunction<AtPh> value) {
        String values = points.stream()
                .map(point -> PreservingView.plain(value.applyAsDouble(point)))
                .collect(Collectors.joining(","));
        return new Curve(name, kind, ink, values);
    }

    private static List<Row> rows(Preserving preserving) {
        List<Row> rows = new ArrayList<>();
        for (AtPh point : preserving.curve()) {
            if (Math.abs(Math.IEEEremainder(point.ph(), TABLE_EVERY)) < 1e-9) {
                boolean own = preserving
                        .ph()
                        .map(ph -> ph.low() < point.ph() + TABLE_EVERY && point.ph() <= ph.high())
                        .orElse(false);
                List<String> cells = new ArrayList<>();
                for (PreservativeState state : point.states()) {
                    cells.add(Format.range(state.undissociatedPercent(), 1));
                    cells.add(PreservingView.free(state));
                }
                rows.add(new Row(Format.figure(point.ph(), 1), own, cells));
            }
        }
        return rows;
    }
}
