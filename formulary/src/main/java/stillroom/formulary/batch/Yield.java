package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * Where the batch went.
 *
 * @param added everything put in [g]
 * @param evaporated by weighing back [g]
 * @param filled into containers, as the log states it [g]
 * @param unaccounted still in vessels by the book: after the last fill, what stayed on walls and tools; negative where
 *     more was taken out than the book held [g]
 */
public record Yield(
        Grams added,
        Grams evaporated,
        Grams filled,
        Grams retained,
        Grams samples,
        Grams handedOver,
        Grams unaccounted) {
    public static Yield of(BatchState state) {
        Grams added = Grams.sum(state.inputs().stream().map(Content::mass).toList());
        Grams lost = state.everywhere().lost();
        Grams filled = said(state, Drawn.Kind.FILL);
        Grams retained = said(state, Drawn.Kind.RETAINED);
        Grams samples = said(state, Drawn.Kind.SAMPLE);
        Grams handed = said(state, Drawn.Kind.HANDED_OVER);
        Grams out = Grams.sum(List.of(lost, filled, retained, samples, handed));
        return new Yield(added, lost, filled, retained, samples, handed, added.minus(out));
    }

    private static Grams said(BatchState state, Drawn.Kind kind) {
        return Grams.sum(state.drawn().stream()
                .filter(drawn -> drawn.kind() == kind)
                .map(Drawn::said)
                .toList());
    }

    /** Filled in percent of what was put in less evaporation; none while nothing is in [%]. */
    public Optional<BigDecimal> filledPercent() {
        return percent(filled);
    }

    /** What is unaccounted for, in the same percent; may be negative [%]. */
    public Optional<BigDecimal> lossPercent() {
        return percent(unaccounted);
    }

    private Optional<BigDecimal> percent(Grams part) {
        Grams made = added.minus(evaporated);
        return made.signum() > 0
                ? Optional.of(part.value().movePointRight(2).divide(made.value(), MathContext.DECIMAL32))
                : Optional.empty();
    }
}
