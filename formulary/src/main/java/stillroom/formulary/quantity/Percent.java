package stillroom.formulary.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Mass percent (w/w), exact, 0 to 100 [%].
 *
 * @param value the figure as typed, trailing zeros removed so that 1.0 equals 1
 */
public record Percent(BigDecimal value) implements Comparable<Percent> {
    public static final Percent ZERO = new Percent(BigDecimal.ZERO);
    public static final Percent HUNDRED = new Percent(BigDecimal.valueOf(100));

    public Percent {
        value = Exact.normal(value);
        if (value.signum() < 0 || value.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw new IllegalArgumentException("percent is " + value.toPlainString() + " %, allowed 0 to 100 %");
        }
    }

    /** A percentage from its decimal figure, such as "2.5" [%]. */
    public static Percent of(String figure) {
        return new Percent(new BigDecimal(figure));
    }

    /** The percentage that a part is of a whole, to 12 significant digits [%]. */
    public static Percent share(Grams part, Grams whole) {
        return new Percent(part.value()
                .multiply(BigDecimal.valueOf(100))
                .divide(whole.value(), new MathContext(12, RoundingMode.HALF_EVEN)));
    }

    public Percent plus(Percent other) {
        return new Percent(value.add(other.value));
    }

    public Percent minus(Percent other) {
        return new Percent(value.subtract(other.value));
    }

    /** This share of a mass, exact [g]. */
    public Grams of(Grams whole) {
        return new Grams(whole.value().multiply(value).movePointLeft(2));
    }

    /** The same share as a fraction, 0 to 1. */
    public double massFraction() {
        return value.movePointLeft(2).doubleValue();
    }

    public boolean isZero() {
        return value.signum() == 0;
    }

    @Override
    public int compareTo(Percent other) {
        return value.compareTo(other.value);
    }

    /** The figure without unit and without exponent. */
    @Override
    public String toString() {
        return value.toPlainString();
    }
}
