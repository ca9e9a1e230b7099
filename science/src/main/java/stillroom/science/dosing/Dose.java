package stillroom.science.dosing;

import java.util.List;
import stillroom.science.equilibrium.RangeLimit;

/**
 * A proposed addition to the bulk.
 *
 * @param grams to pour now [g]
 * @param stage which part of the way this is
 * @param gramsToTarget all that is missing, best estimate [g]
 * @param lowGrams lower end of the 95 % interval of all that is missing [g]
 * @param highGrams upper end [g]
 * @param percentOfBulk what is poured now, of bulk and additions together [% w/w]
 * @param now the bulk as fitted
 * @param after the bulk after pouring this dose
 * @param bufferCapacityMolPerKg equivalents per kilogram of liquid and pH at the present pH [mol/kg]
 * @param exceeded borders of the model's range that the dosed bulk crosses
 * @param cautions what to mind while handling the corrector
 */
public record Dose(
        double grams,
        Stage stage,
        double gramsToTarget,
        double lowGrams,
        double highGrams,
        double percentOfBulk,
        State now,
        State after,
        double bufferCapacityMolPerKg,
        List<RangeLimit> exceeded,
        List<Caution> cautions) {

    public Dose {
        exceeded = List.copyOf(exceeded);
        cautions = List.copyOf(cautions);
    }

    /** Part of the way. */
    public enum Stage {
        /** 70 % of the lower end of the interval: nothing has been poured yet, or the interval is still too wide. */
        FIRST_PART,
        /** The whole rest: its interval ends within the band. */
        REST,
        /** Half of the way: strips do not allow more. */
        HALF_STEP
    }

    /**
     * The bulk at one point.
     *
     * @param pH best estimate
     * @param low lower end of the 95 % interval
     * @param high upper end
     * @param ionicStrengthMolPerKg per kilogram of water [mol/kg]
     */
    public record State(double pH, double low, double high, double ionicStrengthMolPerKg) {}
}
