package stillroom.science.dosing;

/**
 * A point of the fitted titration curve.
 *
 * @param grams of corrector poured in addition [g]
 * @param pH best estimate
 * @param low lower end of the 95 % interval
 * @param high upper end
 */
public record CurvePoint(double grams, double pH, double low, double high) {}
