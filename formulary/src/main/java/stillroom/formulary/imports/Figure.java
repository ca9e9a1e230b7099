package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.ReadingKind;

/**
 * What the cell of an amount says, before it is known what the whole is.
 *
 * @param value the figure; for a range its lower end; for "to a whole" the whole or the expected amount
 * @param high upper end of a range
 * @param unit where the cell itself names one
 * @param reading what is added up to, for {@link Kind#TO_READING}
 */
record Figure(
        Kind kind,
        Optional<BigDecimal> value,
        Optional<BigDecimal> high,
        Optional<Unit> unit,
        Optional<ReadingKind> reading,
        List<Flag> flags) {
    /** The forms in which amounts are written. */
    enum Kind {
        EXACT,
        RANGE,
        /** q.s. to 100, the rest. */
        TO_WHOLE,
        /** q.s. to pH and the like. */
        TO_READING,
        /** q.s. without saying to what. */
        AS_NEEDED,
        /** Words or signs that are no amount. */
        UNREADABLE,
        NONE
    }

    static final Figure NOTHING = of(Kind.NONE);

    Figure {
        flags = List.copyOf(flags);
    }

    static Figure of(Kind kind) {
        return new Figure(kind, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    static Figure exact(BigDecimal value) {
        return new Figure(
                Kind.EXACT, Optional.of(value), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    boolean isAmount() {
        return kind != Kind.NONE && kind != Kind.UNREADABLE;
    }

    boolean isNumber() {
        return kind == Kind.EXACT || kind == Kind.RANGE;
    }

    /** The figure; of a range the middle; 0 where there is none. */
    BigDecimal middle() {
        BigDecimal low = value.orElse(BigDecimal.ZERO);
        return high.map(upper -> low.add(upper).divide(BigDecimal.valueOf(2))).orElse(low);
    }

    /** The figure in the unit of its column, where it says another mass of its own: "2 kg" among grams; drops weigh nothing. */
    BigDecimal middleIn(Unit column) {
        Optional<BigDecimal> own = unit.flatMap(Unit::grams);
        Optional<BigDecimal> theirs = column.grams();
        if (unit.filter(one -> one == Unit.VOLUME).isPresent() && theirs.isPresent()) {
            return BigDecimal.ZERO;
        }
        return own.isPresent() && theirs.isPresent()
                ? middle().multiply(own.get()).divide(theirs.get(), java.math.MathContext.DECIMAL64)
                : middle();
    }

    Figure with(Flag flag) {
        List<Flag> more = new ArrayList<>(flags);
        more.add(flag);
        return new Figure(kind, value, high, unit, reading, more);
    }

    Figure in(Optional<Unit> other) {
        return new Figure(kind, value, high, other, reading, flags);
    }
}
