package stillroom.formulary.quantity;

/** A closed range of a figure whose unit is in the name of the field that holds it (pH, degrees Celsius, g/ml). */
public record Interval(double low, double high) {
    public Interval {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new IllegalArgumentException("interval " + low + " to " + high + " is not a finite ascending range");
        }
    }

    public static Interval point(double value) {
        return new Interval(value, value);
    }

    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    public double middle() {
        return (low + high) / 2;
    }

    public boolean isPoint() {
        return low == high;
    }
}
