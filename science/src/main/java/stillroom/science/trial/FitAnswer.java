package stillroom.science.trial;

import java.util.List;
import java.util.function.Function;

/** What comes of fitting trials. */
public sealed interface FitAnswer {
    /** One function per case. */
    <T> T match(Function<Fitted, T> fitted, Function<NotYet, T> notYet);

    /** A fit. */
    record Fitted(MixtureFit fit) implements FitAnswer {
        @Override
        public <T> T match(Function<Fitted, T> fitted, Function<NotYet, T> notYet) {
            return fitted.apply(this);
        }
    }

    /** No fit, and why, in sentences. */
    record NotYet(List<String> reasons) implements FitAnswer {
        public NotYet {
            reasons = List.copyOf(reasons);
        }

        @Override
        public <T> T match(Function<Fitted, T> fitted, Function<NotYet, T> notYet) {
            return notYet.apply(this);
        }
    }
}
