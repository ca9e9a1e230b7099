package stillroom.science.equilibrium;

/**
 * How far a pH computed with these constants and without ion pairs may lie from what a careful bench reads.
 *
 * <p>Half-width = 0.12 + 0.15 √I, at most 0.2 up to I = 0.5 mol/kg and growing by 0.4 per mol/kg above. Calibrated so
 * that it covers the buffer tables of McIlvaine, J. Biol. Chem. 49, 183 (1921), largest residual 0.19, and Gomori,
 * Methods in Enzymology 1, 138 (1955), largest residual 0.13; the primary pH standards are met within 0.02. It does not
 * cover doubt about the composition.
 */
public final class ModelUncertainty {

    private ModelUncertainty() {}

    /** Half-width of the interval in which the true pH is expected [-]. */
    public static double halfWidth(double ionicStrengthMolPerKg) {
        double inside = Math.min(0.12 + 0.15 * Math.sqrt(ionicStrengthMolPerKg), 0.2);
        return inside + 0.4 * Math.max(0, ionicStrengthMolPerKg - 0.5);
    }
}
