package stillroom.formulary.material;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.reference.ReferenceRow;

/** Ranges that a table writes as two columns; both filled or both empty. */
final class Ranges {
    private Ranges() {}

    static Optional<Interval> interval(ReferenceRow row, String lower, String upper) {
        Optional<Double> low = row.number(lower);
        Optional<Double> high = row.number(upper);
        if (low.isPresent() != high.isPresent()) {
            throw row.fault("\"" + lower + "\" and \"" + upper + "\" stand together or not at all");
        }
        if (low.isEmpty()) {
            return Optional.empty();
        }
        if (low.get() > high.get()) {
            throw row.fault("range " + low.get() + " to " + high.get() + " runs downwards");
        }
        return Optional.of(new Interval(low.get(), high.get()));
    }

    static PercentRange percent(ReferenceRow row, String lower, String upper) {
        Percent low = percent(row, lower);
        Percent high = percent(row, upper);
        if (low.compareTo(high) > 0) {
            throw row.fault("range " + low + " to " + high + " % runs downwards");
        }
        return new PercentRange(low, high);
    }

    private static Percent percent(ReferenceRow row, String column) {
        BigDecimal figure = row.requiredDecimal(column);
        if (figure.signum() < 0 || figure.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw row.fault(figure.toPlainString() + " % in \"" + column + "\" is outside 0 to 100 %");
        }
        return new Percent(figure);
    }
}
