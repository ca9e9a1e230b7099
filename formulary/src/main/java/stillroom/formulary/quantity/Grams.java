package stillroom.formulary.quantity;

import java.math.BigDecimal;
import java.util.Collection;

/**
 * A mass, exact [g]. May be negative where something is taken back; places that need a positive one say so.
 *
 * @param value the figure, trailing zeros removed so that 1.0 equals 1
 */
public record Grams(BigDecimal value) implements Comparable<Grams> {
    public static final Grams ZERO = new Grams(BigDecimal.ZERO);

    public Grams {
        value = Exact.normal(value);
    }

    /** A mass from its decimal figure, such as "250.0" [g]. */
    public static Grams of(String figure) {
        return new Grams(new BigDecimal(figure));
    }

    /** The sum of masses, zero for none [g]. */
    public static Grams sum(Collection<Grams> parts) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Grams part : parts) {
            sum = sum.add(part.value);
        }
        return new Grams(sum);
    }

    public Grams plus(Grams other) {
        return new Grams(value.add(other.value));
    }

    public Grams minus(Grams other) {
        return new Grams(value.subtract(other.value));
    }

    public Grams negated() {
        return new Grams(value.negate());
    }

    public Grams abs() {
        return new Grams(value.abs());
    }

    public int signum() {
        return value.signum();
    }

    public boolean isZero() {
        return value.signum() == 0;
    }

    public double doubleValue() {
        return value.doubleValue();
    }

    @Override
    public int compareTo(Grams other) {
        return value.compareTo(other.value);
    }

    /** The figure without unit and without exponent. */
    @Override
    public String toString() {
        return value.toPlainString();
    }
}
