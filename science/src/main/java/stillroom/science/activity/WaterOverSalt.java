package stillroom.science.activity;

/**
 * Water activity over a solution of a salt of two singly charged ions, by Pitzer's equation at 25 degrees Celsius.
 *
 * <p>ln aw = -2 m φ M(water); φ - 1 = -A √m/(1 + 1.2 √m) + m (β0 + β1 exp(-2 √m)) + m² C, with A = 0.3915 (kg/mol)^½.
 * Source: Pitzer and Mayorga 1973, from memory. Valid to about 6 mol/kg.
 *
 * @param beta0, beta1 of the salt [kg/mol]
 * @param c of the salt [kg²/mol²]
 */
public record WaterOverSalt(double beta0, double beta1, double c) {
    /** Sodium chloride: 0.0765, 0.2664, 0.00127 (Pitzer and Mayorga 1973, from memory). */
    public static final WaterOverSalt SODIUM_CHLORIDE = new WaterOverSalt(0.0765, 0.2664, 0.00127);

    private static final double A = 0.3915;
    private static final double KILOGRAMS_OF_WATER_PER_MOL = 0.018015;

    /** Osmotic coefficient at a molality [-]. */
    public double osmotic(double molPerKg) {
        double root = Math.sqrt(molPerKg);
        return 1
                - A * root / (1 + 1.2 * root)
                + molPerKg * (beta0 + beta1 * Math.exp(-2 * root))
                + molPerKg * molPerKg * c;
    }

    /** Water activity at a molality, 0 to 1 [-]. */
    public double waterActivity(double molPerKg) {
        return Math.exp(-2 * molPerKg * osmotic(molPerKg) * KILOGRAMS_OF_WATER_PER_MOL);
    }
}
