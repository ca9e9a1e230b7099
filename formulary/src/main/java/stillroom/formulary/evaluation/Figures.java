package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Map;
import stillroom.formulary.material.ChargeClass;

/**
 * The figures that stand beside a formula at all times.
 *
 * @param totalPercent sum of all lines, the q.s. line included [%]
 * @param waterPercent water in the pot, brought by materials included [%]
 * @param activeMatterPercent surfactant active matter by charge class [%]
 * @param phasePercent share of each phase, by name in working order [%]
 * @param costPer100g material cost of 100 g in the workshop's currency, or which prices are missing
 * @param ph expected pH, or why it is not known
 * @param others further figures (HLB, water activity, natural origin ...), each with its method
 */
public record Figures(
        Figure totalPercent,
        Figure waterPercent,
        Map<ChargeClass, Figure> activeMatterPercent,
        List<Figure> phasePercent,
        Outcome<Figure> costPer100g,
        Outcome<Figure> ph,
        List<Figure> others) {
    public Figures {
        activeMatterPercent = Map.copyOf(activeMatterPercent);
        phasePercent = List.copyOf(phasePercent);
        others = List.copyOf(others);
    }
}
