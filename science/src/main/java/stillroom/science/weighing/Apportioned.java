package stillroom.science.weighing;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;

/** The outcome of rounding shares so that they still add up to the whole. */
public sealed interface Apportioned {
    /**
     * Done.
     *
     * @param parts one per share, in their order; they add up to the whole exactly
     * @param residue index of the share that took what rounding left over; none where it was spread in single steps
     */
    record Exactly(List<BigDecimal> parts, OptionalInt residue) implements Apportioned {
        public Exactly {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Cannot be done.
     *
     * @param conflict indexes of the shares whose floor and ceiling stand in the way
     */
    record Impossible(String because, List<Integer> conflict) implements Apportioned {
        public Impossible {
            conflict = List.copyOf(conflict);
        }
    }
}
