package stillroom.science.dosing;

/**
 * What the pH was read with, and how finely the corrector was weighed.
 *
 * @param repeatability standard deviation of a reading [-]
 * @param balanceStepGrams resolution of the balance [g]
 * @param strip whether paper strips were used, which allow half a step only
 */
public record Instrument(double repeatability, double balanceStepGrams, boolean strip) {
    public Instrument {
        if (!(repeatability > 0 && repeatability <= 1)) {
            throw new IllegalArgumentException("repeatability is " + repeatability + ", allowed: above 0 to 1 pH");
        }
        if (!(balanceStepGrams > 0 && balanceStepGrams <= 100)) {
            throw new IllegalArgumentException(
                    "balanceStepGrams is " + balanceStepGrams + " g, allowed: above 0 to 100");
        }
    }

    /** A meter. */
    public static Instrument meter(double repeatability, double balanceStepGrams) {
        return new Instrument(repeatability, balanceStepGrams, false);
    }

    /** Strips: 0.4 pH, between the 0.3 and 0.5 that common practice gives them (no source). */
    public static Instrument strips(double balanceStepGrams) {
        return new Instrument(0.4, balanceStepGrams, true);
    }
}
