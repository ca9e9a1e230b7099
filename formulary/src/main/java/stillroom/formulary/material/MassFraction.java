package stillroom.formulary.material;

/**
 * How much of a whole something is, known exactly or as a range: lower, nominal and upper mass fraction, each 0 to 1.
 * Where a data sheet gives only a range, the nominal is its middle unless the card says better.
 */
public record MassFraction(double lower, double nominal, double upper) {
    public MassFraction {
        if (!(0 <= lower && lower <= nominal && nominal <= upper && upper <= 1)) {
            throw new IllegalArgumentException(
                    "mass fraction " + lower + " / " + nominal + " / " + upper + " must ascend within 0 to 1");
        }
    }

    public static MassFraction exactly(double fraction) {
        return new MassFraction(fraction, fraction, fraction);
    }

    public boolean isExact() {
        return lower == upper;
    }
}
