package stillroom.formulary.judgement.preservation;

import stillroom.formulary.constants.AcidConstant;

/** The share of an acid or base that carries no charge. */
public final class Undissociated {
    private Undissociated() {}

    /**
     * Fraction of the uncharged form at a pH, by the dissociation constants at 25 degrees Celsius and ionic strength 0
     * [0 to 1]. Source: Henderson and Hasselbalch, over all steps.
     */
    public static double fraction(AcidConstant acid, double ph) {
        double weight = 1;
        double all = 1;
        double uncharged = acid.protonsLostWhenUncharged() == 0 ? 1 : 0;
        for (int lost = 1; lost <= acid.steps().size(); lost++) {
            weight *= Math.pow(10, ph - acid.steps().get(lost - 1).pKa());
            all += weight;
            uncharged = lost == acid.protonsLostWhenUncharged() ? weight : uncharged;
        }
        return uncharged / all;
    }
}
