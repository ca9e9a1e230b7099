package stillroom.science.design;

import java.util.List;
import java.util.function.Function;

/** What comes of a question for a design. */
public sealed interface DesignAnswer {
    /** One function per case. */
    <T> T match(Function<Found, T> found, Function<Refused, T> refused);

    /** A design. */
    record Found(MixtureDesign design) implements DesignAnswer {
        @Override
        public <T> T match(Function<Found, T> found, Function<Refused, T> refused) {
            return found.apply(this);
        }
    }

    /** No design, and why, in sentences. */
    record Refused(List<String> reasons) implements DesignAnswer {
        public Refused {
            reasons = List.copyOf(reasons);
        }

        @Override
        public <T> T match(Function<Found, T> found, Function<Refused, T> refused) {
            return refused.apply(this);
        }
    }
}
