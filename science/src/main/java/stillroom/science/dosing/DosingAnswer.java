package stillroom.science.dosing;

import java.util.List;
import java.util.function.Function;

/** What comes out of a sample titration. */
public sealed interface DosingAnswer {

    /** One function per case. */
    <T> T match(Function<Proposed, T> proposed, Function<InBand, T> inBand, Function<Refused, T> refused);

    /** Pour this, then read again. */
    record Proposed(Dose dose) implements DosingAnswer {
        @Override
        public <T> T match(Function<Proposed, T> proposed, Function<InBand, T> inBand, Function<Refused, T> refused) {
            return proposed.apply(this);
        }
    }

    /**
     * The bulk is already where it should be.
     *
     * @param pH fitted, with low and high end of its 95 % interval
     */
    record InBand(double pH, double low, double high) implements DosingAnswer {
        @Override
        public <T> T match(Function<Proposed, T> proposed, Function<InBand, T> inBand, Function<Refused, T> refused) {
            return inBand.apply(this);
        }
    }

    /** No dose, and why. */
    record Refused(List<Refusal> reasons) implements DosingAnswer {
        public Refused {
            reasons = List.copyOf(reasons);
        }

        @Override
        public <T> T match(Function<Proposed, T> proposed, Function<InBand, T> inBand, Function<Refused, T> refused) {
            return refused.apply(this);
        }
    }
}
