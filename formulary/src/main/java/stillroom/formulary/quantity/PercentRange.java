package stillroom.formulary.quantity;

import java.math.BigDecimal;

/** A range of mass percent, low not above high [%]. */
public record PercentRange(Percent low, Percent high) {
    public PercentRange {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("range " + low + " to " + high + " % runs downwards");
        }
    }

    public static PercentRange of(String low, String high) {
        return new PercentRange(Percent.of(low), Percent.of(high));
    }

    public static PercentRange point(Percent value) {
        return new PercentRange(value, value);
    }

    /** Half way between the ends, exact [%]. */
    public Percent middle() {
        return new Percent(low.value().add(high.value()).divide(BigDecimal.valueOf(2)));
    }

    public boolean isPoint() {
        return low.equals(high);
    }
}
