package stillroom.science.equilibrium;

/**
 * The constants of the solvent and of the activity equation.
 *
 * <p>Davies: log10 g(z) = -A z² (√I/(1+√I) - b I); uncharged forms, zwitterions included, have g = 1; hydrogen and
 * hydroxide ions have g(1); the activity of water is 1. Above I = {@value #FROZEN_ABOVE} mol/kg, far outside the
 * range of validity, the coefficients keep their value so that every composition has an answer.
 *
 * @param debyeHueckelAt25 A at 25 °C; at other temperatures scaled by {@link WaterProperties#debyeHueckelRatio}
 *     [(kg/mol)^½]
 * @param daviesCoefficient b, 0.3 after Davies (1962) [kg/mol]
 * @param ionProduct pKw and how it moves with temperature
 */
public record WaterModel(double debyeHueckelAt25, double daviesCoefficient, Dissociation ionProduct) {

    /** 25 °C [K]. */
    static final double KELVIN_AT_25 = 298.15;

    static final double LN_10 = 2.302585092994046;

    /** Ionic strength above which activity coefficients no longer change [mol/kg]. */
    static final double FROZEN_ABOVE = 2.0;

    /**
     * A = 0.509, b = 0.3, pKw = 13.995 with dH 56.38 kJ/mol and dCp -188.9 J/(mol K).
     *
     * <p>Enthalpy and heat capacity are fitted so that pKw follows 14.938, 14.163, 13.836 and 13.262 at 0, 20, 30 and
     * 50 °C within 0.003. Source: Harned and Owen, The Physical Chemistry of Electrolytic Solutions (1958), from memory;
     * A and b: Davies, Ion Association (1962), from memory.
     */
    public static final WaterModel STANDARD = new WaterModel(0.509, 0.3, new Dissociation(13.995, 56.38, -188.9));

    public WaterModel {
        Limits.within("debyeHueckelAt25", debyeHueckelAt25, 0, 2, "(kg/mol)^½");
        Limits.within("daviesCoefficient", daviesCoefficient, 0, 1, "kg/mol");
    }

    /** A at a temperature [(kg/mol)^½]. */
    public double debyeHueckel(double celsius) {
        return celsius == 25 ? debyeHueckelAt25 : debyeHueckelAt25 * WaterProperties.debyeHueckelRatio(celsius);
    }

    /** Activity coefficient of an ion of a charge number at an ionic strength [-]. */
    public double activityCoefficient(int charge, double ionicStrengthMolPerKg, double celsius) {
        double strength = Math.min(ionicStrengthMolPerKg, FROZEN_ABOVE);
        double root = Math.sqrt(strength);
        double term = root / (1 + root) - daviesCoefficient * strength;
        return Math.pow(10, -debyeHueckel(celsius) * charge * charge * term);
    }
}
