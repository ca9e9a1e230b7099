package stillroom.science.curve;

/**
 * One reading of a salt or thickener curve.
 *
 * @param dose total electrolyte, or thickener, what the materials bring included [mass percent]
 * @param viscosity above 0, in the unit of the instrument; all points of one curve in the same [mPa s, as a rule]
 */
public record SaltPoint(double dose, double viscosity) {
    public SaltPoint {
        if (!(dose >= 0 && dose <= 100) || !(viscosity > 0) || !Double.isFinite(viscosity)) {
            throw new IllegalArgumentException(
                    "dose " + dose + " % and viscosity " + viscosity + ": 0 to 100 %, and above 0");
        }
    }
}
