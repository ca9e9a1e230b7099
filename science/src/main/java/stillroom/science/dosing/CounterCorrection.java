package stillroom.science.dosing;

/**
 * What it costs to correct back after too much.
 *
 * @param grams of the opposite corrector [g]
 * @param percentOfBulk of bulk and additions [% w/w]
 * @param saltMolPerKg acid and base that only cancel each other, per kilogram of bulk [mol/kg]
 * @param ionicStrengthRise per kilogram of water [mol/kg]
 * @param leavingIsWithinBand whether the bulk may stay as it is
 */
public record CounterCorrection(
        double grams,
        double percentOfBulk,
        double saltMolPerKg,
        double ionicStrengthRise,
        boolean leavingIsWithinBand) {

    /** Costs of pouring a dose of the opposite corrector; the salt is what that dose neutralises on its way back. */
    public static CounterCorrection of(DosingTask task, Dose dose) {
        double way = Math.abs(task.targetPh() - dose.now().pH());
        double equivalents = dose.bufferCapacityMolPerKg() * way;
        return new CounterCorrection(
                dose.gramsToTarget(),
                dose.percentOfBulk() * dose.gramsToTarget() / dose.grams(),
                equivalents,
                dose.after().ionicStrengthMolPerKg() - dose.now().ionicStrengthMolPerKg(),
                way <= task.halfBand());
    }
}
