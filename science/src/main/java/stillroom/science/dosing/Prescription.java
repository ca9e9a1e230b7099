package stillroom.science.dosing;

/**
 * How to titrate the sample.
 *
 * @param sampleGrams to weigh off; it is thrown away afterwards [g]
 * @param dilutionMassFraction share of the corrector in the dilution to weigh out, 1 = undiluted [-]
 * @param dilution the diluted corrector
 * @param firstGrams first addition of the dilution [g]
 * @param expectedGrams expected for the whole way, known chemistry and usual buffering [g]
 */
public record Prescription(
        double sampleGrams, double dilutionMassFraction, Corrector dilution, double firstGrams, double expectedGrams) {}
