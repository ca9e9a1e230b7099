package stillroom.desk.chemistry;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stillroom.desk.chemistry.SurfacePage.Charge;
import stillroom.desk.chemistry.SurfacePage.Row;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.material.ChargeClass;

/** Puts the page on surfactants and emulsion together. */
final class SurfaceView {
    private SurfaceView() {}

    static SurfacePage page(Frame frame, Studied of, Surface surface, Input input) {
        List<String> pair = Pair.solve(input, surface, of.book());
        return new SurfacePage(
                frame,
                of,
                activeMatter(surface.activeMatterPercent()),
                figure(surface.anionicToAmphoteric(), 2, ""),
                surface.mildness()
                        .match(figure -> Format.figure(figure.value(), 1), because -> "Not known: " + because),
                surface.phases().stream().map(SurfaceView::row).toList(),
                figure(surface.hlb(), 1, ""),
                surface.hlb().match(Figure::method, because -> ""),
                figure(surface.requiredHlb(), 1, ""),
                surface.requiredHlb().match(Figure::method, because -> ""),
                surface.emulsifiers().stream().map(SurfaceView::emulsifier).toList(),
                input.typed(),
                Pair.choices(surface, of.book()),
                pair,
                surface.charges().stream().map(SurfaceView::charge).toList(),
                surface.netCharge().match(sum -> Format.range(sum, 1) + " mmol/kg", because -> "not known: " + because),
                surface.ph().map(ph -> "pH " + Format.range(ph, 1)).orElse("no known pH"));
    }

    private static List<Row> activeMatter(Map<ChargeClass, Figure> byClass) {
        return new TreeMap<>(byClass)
                .entrySet().stream()
                        .map(entry -> new Row(
                                Format.words(entry.getKey()),
                                shown(entry.getValue(), 2) + " %",
                                "surfactants as 100 %"))
                        .toList();
    }

    private static Row row(Figure figure) {
        return new Row(figure.name(), shown(figure, 1) + " %", figure.method());
    }

    private static Row emulsifier(Surface.Emulsifier one) {
        return new Row(
                one.name(),
                Format.figure(one.percent(), 2) + " %",
                one.hlb().match(hlb -> "HLB " + Format.range(hlb, 1), because -> because));
    }

    private static Charge charge(Surface.Charge line) {
        return new Charge(
                line.name(),
                Format.words(line.charge()),
                line.millimolPerKilogram().match(known -> Format.range(known, 1), because -> "not known: " + because),
                line.how());
    }

    private static String figure(Outcome<Figure> outcome, int decimals, String unit) {
        return outcome.match(figure -> shown(figure, decimals) + unit, SurfaceView::whyNot);
    }

    private static String whyNot(String because) {
        return because.startsWith("does not apply") ? because : "not known: " + because;
    }

    private static String shown(Figure figure, int decimals) {
        return Format.range(figure.low(), figure.high(), decimals);
    }
}
