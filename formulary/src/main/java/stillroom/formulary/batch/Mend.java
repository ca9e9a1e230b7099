package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.util.List;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** One way out of an over-pour. Which are open depends on how far the work has gone. */
public sealed interface Mend {
    /**
     * So far over that the figure is doubtful: strike the entry if it was typed wrongly.
     *
     * @param entry number of the weighing
     * @param mass as it was written down [g]
     */
    record Strike(int entry, Grams mass) implements Mend {}

    /** It does no harm: go on. */
    record Leave(String why) implements Mend {}

    /** Still on top and not stirred in: take it back, to waste, never into the lot [g]. */
    record TakeBack(Grams mass) implements Mend {}

    /**
     * The phase is mixed but stands alone: add to its partners, use what the batch needs of it, discard the rest.
     *
     * @param factor by which the phase grows
     * @param use of the mended phase [g]
     * @param discard of the mended phase [g]
     */
    record ScalePhase(BigDecimal factor, List<Addition> additions, Grams use, Grams discard) implements Mend {
        public ScalePhase {
            additions = List.copyOf(additions);
        }
    }

    /**
     * The least larger batch in which every line is within its tolerance again.
     *
     * @param against what speaks against it: vessel, stock, balance, heat; empty where nothing is known to
     */
    record LargerBatch(Grams batch, List<Addition> additions, List<String> against) implements Mend {
        public LargerBatch {
            additions = List.copyOf(additions);
            against = List.copyOf(against);
        }
    }

    /**
     * A batch beside this one that holds so much less of the line, to be blended with it; together they are the formula.
     *
     * @param batch of the second [g]
     * @param less of the line than the formula asks [g]
     */
    record SecondBatch(Grams batch, Grams less) implements Mend {}

    /** Keep it as it is; the evaluation of what was made decides. The share that the line now has [%]. */
    record Accept(Percent made) implements Mend {}

    /** Give it up; so much material is in [g]. */
    record Discard(Grams mass) implements Mend {}
}
