package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * What one filling put into each container on average, beside the declared content. Single containers are looked at by
 * {@link FillCheck}.
 *
 * @param each mean of the containers, to a hundredth of a gram [g]
 * @param says what it comes to, one sentence
 */
public record MeanFill(Grams each, Verdict verdict, String says) {
    /** More than the tolerable error and more than this beyond the declared content is clearly over. Common practice, no source. */
    private static final BigDecimal CLEARLY_OVER = new BigDecimal("0.05");

    /** Between these lie nearly all cosmetics without much air in them [g/ml]. Common practice, no source. */
    private static final double LIGHTEST = 0.85;

    private static final double HEAVIEST = 1.10;

    /** Trapped air takes 2 to 10 % away from a density; mixing adds a few. Common practice, no source. */
    private static final double MOST_AIR = 0.9;

    private static final double MOST_SHRINKING = 1.03;

    /** How the mean stands to the declared content. */
    public enum Verdict {
        FITS,
        /** Below the declared content, within the tolerable error: the average has to reach it. */
        BELOW,
        /** Below by more than the tolerable error. */
        SHORT,
        /** Clearly more than declared. */
        OVER,
        /** A volume is declared and no density is known; the mean would be likely. */
        DENSITY_OPEN,
        /** No density is known, and the mean would ask for an unlikely one. */
        DENSITY_UNLIKELY;

        /** Whether a count or a total is likely to be wrong, so that one asks before it is written down. */
        public boolean asks() {
            return this == SHORT || this == OVER || this == DENSITY_UNLIKELY;
        }

        /** Whether the mean is to be looked at. */
        public boolean warns() {
            return asks() || this == BELOW;
        }
    }

    /** The mean of a filling [g]. */
    public static Grams each(BatchEvent.Filled filled) {
        return new Grams(filled.total()
                .value()
                .divide(BigDecimal.valueOf(Math.max(1, filled.containers())), 2, RoundingMode.HALF_EVEN));
    }

    /** @param density as filled [g/ml] */
    public static MeanFill of(BatchEvent.Filled filled, DeclaredContent declared, Optional<Double> density) {
        return of(filled, declared, density, Optional.empty());
    }

    /**
     * Without a density that was read, what one expects narrows down which ones are likely: trapped air takes up to a
     * tenth away.
     *
     * @param density as filled [g/ml]
     * @param expected by the densities of what is in it, see {@link ExpectedDensity} [g/ml]
     */
    public static MeanFill of(
            BatchEvent.Filled filled, DeclaredContent declared, Optional<Double> density, Optional<Double> expected) {
        Grams each = each(filled);
        Optional<Grams> nominal = declared.grams(density);
        return nominal.isPresent()
                ? beside(
                        each,
                        declared,
                        nominal.get(),
                        declared.tolerableError(density).orElseThrow())
                : withoutDensity(each, declared, expected);
    }

    private static MeanFill beside(Grams each, DeclaredContent declared, Grams nominal, Grams error) {
        Grams off = each.minus(nominal);
        String content = declared + (declared.inMillilitres() ? ", " + tenth(nominal) + " g by the density read" : "");
        if (off.signum() < 0) {
            boolean isShort = off.abs().compareTo(error) > 0;
            String says = "Short of the declared " + content + " by " + tenth(off.abs()) + " g; "
                    + (isShort
                            ? "more than the tolerable error of " + tenth(error) + " g."
                            : "the average has to reach what is declared.");
            return new MeanFill(each, isShort ? Verdict.SHORT : Verdict.BELOW, says);
        }
        boolean over = off.compareTo(error) > 0
                && off.value().compareTo(nominal.value().multiply(CLEARLY_OVER)) > 0;
        return new MeanFill(
                each,
                over ? Verdict.OVER : Verdict.FITS,
                over
                        ? tenth(off) + " g more than the declared " + content + "."
                        : "Reaches the declared " + content + ".");
    }

    private static MeanFill withoutDensity(Grams each, DeclaredContent declared, Optional<Double> expected) {
        BigDecimal needed = each.value().divide(declared.figure(), 2, RoundingMode.HALF_EVEN);
        double lightest = expected.map(density -> density * MOST_AIR).orElse(LIGHTEST);
        double heaviest = expected.map(density -> density * MOST_SHRINKING).orElse(HEAVIEST);
        boolean likely = needed.doubleValue() >= lightest && needed.doubleValue() <= heaviest;
        return new MeanFill(
                each,
                likely ? Verdict.DENSITY_OPEN : Verdict.DENSITY_UNLIKELY,
                "The declared " + declared + " would hold this at a density of " + needed.toPlainString() + " g/ml"
                        + (likely ? "." : ", which is unlikely.")
                        + expected.map(density -> String.format(
                                        Locale.ROOT,
                                        " By what is in it one expects %.2f g/ml, less the air in it.",
                                        density))
                                .orElse("")
                        + " Weigh a known volume and write the density down as a reading to be sure.");
    }

    private static String tenth(Grams mass) {
        return new Grams(mass.value().setScale(1, RoundingMode.HALF_EVEN)).toString();
    }
}
