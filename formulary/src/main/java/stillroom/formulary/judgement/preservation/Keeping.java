package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.WaterActivity;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.GrowthFigures;

/** Everything about what keeps a product, at its pH and over a span around it. */
public final class Keeping {
    private Keeping() {}

    /**
     * @param span of pH to draw
     * @param step between two points of the curve, above 0 [pH]
     */
    public static Preserving of(Pot pot, Interval span, double step) {
        Optional<Interval> ph = pot.workingPh();
        Outcome<Figure> activity =
                WaterActivity.outcome(pot.shares(), pot.rules().norrish());
        return new Preserving(
                ph,
                ph.map(known -> Preservation.states(pot, known)).orElse(List.of()),
                curve(pot, span, step),
                activity,
                activity.match(
                        figure -> pot.rules().growth().stream()
                                .map(group -> growth(group, figure))
                                .toList(),
                        because -> List.of()),
                Pot.names(pot.ingredients("preservative-booster")));
    }

    private static List<Preserving.AtPh> curve(Pot pot, Interval span, double step) {
        List<Preserving.AtPh> curve = new ArrayList<>();
        int steps = (int) Math.round((span.high() - span.low()) / step);
        for (int i = 0; i <= steps; i++) {
            double ph = span.low() + i * step;
            curve.add(new Preserving.AtPh(ph, Preservation.states(pot, Interval.point(ph))));
        }
        return curve;
    }

    /** Judged at the wetter end of the water activity. */
    private static Preserving.Growth growth(GrowthFigures group, Figure activity) {
        Preserving.Standing standing = activity.high() < group.least().low()
                ? Preserving.Standing.HURDLE
                : activity.high() < group.least().high() ? Preserving.Standing.SOME_GROW : Preserving.Standing.ALL_GROW;
        return new Preserving.Growth(group.group(), group.least(), group.organism(), standing, group.source());
    }
}
