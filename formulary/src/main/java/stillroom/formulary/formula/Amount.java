package stillroom.formulary.formula;

import java.util.function.Function;
import java.util.function.Supplier;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** How much of a line: a fixed percentage, what is missing to 100, or as much as a reading asks for. */
public sealed interface Amount {
    /** A stated share of the product. */
    record Fixed(Percent percent) implements Amount {}

    /** q.s. to 100: takes what all other lines leave. At most one line of a formula. */
    record ToHundred() implements Amount {}

    /**
     * q.s. to a reading, such as an acid to pH 5.2. The expected amount is reserved out of the q.s.-to-100 line;
     * limits are judged at the upper end of the range.
     */
    record ToReading(ReadingKind reading, Percent expected, PercentRange range) implements Amount {
        public ToReading {
            if (expected.compareTo(range.low()) < 0 || expected.compareTo(range.high()) > 0) {
                throw new IllegalArgumentException("expected " + expected + " % lies outside its range " + range.low()
                        + " to " + range.high() + " %");
            }
        }
    }

    /** One function per case; a new case fails to compile here. */
    default <T> T match(Function<Fixed, T> fixed, Supplier<T> toHundred, Function<ToReading, T> toReading) {
        if (this instanceof Fixed f) {
            return fixed.apply(f);
        }
        return this instanceof ToReading r ? toReading.apply(r) : toHundred.get();
    }

    static Amount fixed(String percent) {
        return new Fixed(Percent.of(percent));
    }
}
