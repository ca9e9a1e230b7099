package stillroom.formulary.reformulation;

import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.surface.SurfaceWork;
import stillroom.formulary.quantity.Interval;

/**
 * What the evaluation knows of the present formula and what is no plain sum. What it does not know cannot be kept.
 *
 * @param hlb of the emulsifiers, where it applies
 * @param requiredHlb of the oils, where it is known
 * @param charge net, middle of its range [mmol/kg]
 * @param ph at which charges are counted
 * @param currency of the prices, empty where it has no name
 */
record Present(
        Optional<Double> hlb,
        Optional<Double> requiredHlb,
        Optional<Double> charge,
        Optional<Interval> ph,
        String currency) {
    static Present of(Recast recast) {
        Pot pot = recast.pot(Subjects.of(recast.formula(), recast.brief()));
        var surface = SurfaceWork.of(pot);
        return new Present(
                known(surface.hlb()).map(Figure::value),
                known(surface.requiredHlb()).map(Figure::value),
                known(surface.netCharge()).map(Interval::middle),
                surface.ph(),
                recast.prices().currency());
    }

    private static <T> Optional<T> known(Outcome<T> outcome) {
        return outcome.match(Optional::of, because -> Optional.empty());
    }
}
