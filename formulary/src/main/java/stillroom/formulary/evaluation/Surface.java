package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.quantity.Interval;

/**
 * What stands between oil, water and skin: surfactants, phases, HLB and net charge.
 *
 * @param activeMatterPercent by charge class [% of the product]
 * @param anionicToAmphoteric ratio of active matter, or why there is none
 * @param mildness what can be said of it, or why nothing
 * @param phases oil, water, what stands between them, and the rest [% of the product]
 * @param hlb of the emulsifiers together, or why it does not apply
 * @param requiredHlb of the oils for oil in water, or why it is not known
 * @param emulsifiers each with its HLB, or why that does not apply
 * @param emulsifierPercent those with an HLB together [% of the product]
 * @param charges one line for each ionic surfactant and polymer; amphoterics at the product's pH
 * @param netCharge the sum, or why it is not known [mmol of charge per kg of product]
 * @param ph at which charges are counted; empty where none is known
 */
public record Surface(
        Map<ChargeClass, Figure> activeMatterPercent,
        Outcome<Figure> anionicToAmphoteric,
        Outcome<Figure> mildness,
        List<Figure> phases,
        Outcome<Figure> hlb,
        Outcome<Figure> requiredHlb,
        List<Emulsifier> emulsifiers,
        double emulsifierPercent,
        List<Charge> charges,
        Outcome<Interval> netCharge,
        Optional<Interval> ph) {
    public Surface {
        activeMatterPercent = Map.copyOf(activeMatterPercent);
        phases = List.copyOf(phases);
        emulsifiers = List.copyOf(emulsifiers);
        charges = List.copyOf(charges);
    }

    /** An emulsifier or surfactant of the product. */
    public record Emulsifier(String substance, String name, double percent, Outcome<Interval> hlb) {}

    /**
     * One charged surfactant or polymer.
     *
     * @param millimolPerKilogram of charge, its sign included, or why it is not known [mmol/kg of product]
     * @param how it was counted
     */
    public record Charge(
            String substance, String name, ChargeClass charge, Outcome<Interval> millimolPerKilogram, String how) {}
}
