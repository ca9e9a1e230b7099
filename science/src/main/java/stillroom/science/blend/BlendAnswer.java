package stillroom.science.blend;

import java.util.Optional;
import java.util.function.Function;

/** What came of a blending problem. */
public sealed interface BlendAnswer {
    long nodes();

    <T> T match(Function<Optimal, T> optimal, Function<Stopped, T> stopped, Function<Infeasible, T> infeasible);

    /** The best blend where there is one, proven or not. */
    default Optional<Mix> mix() {
        return match(optimal -> Optional.of(optimal.best()), Stopped::best, infeasible -> Optional.empty());
    }

    /**
     * Proven: no blend is better by more than 1e-9, relative to an objective above 1.
     *
     * @param bound no blend is below it
     * @param nodes relaxations that were solved
     */
    record Optimal(Mix best, double objective, double bound, long nodes) implements BlendAnswer {
        @Override
        public <T> T match(
                Function<Optimal, T> optimal, Function<Stopped, T> stopped, Function<Infeasible, T> infeasible) {
            return optimal.apply(this);
        }
    }

    /**
     * Patience was over before the proof.
     *
     * @param objective of the best blend so far; positive infinity where none was found yet
     * @param bound no blend is below it; negative infinity where not even that is known
     */
    record Stopped(Optional<Mix> best, double objective, double bound, long nodes) implements BlendAnswer {
        @Override
        public <T> T match(
                Function<Optimal, T> optimal, Function<Stopped, T> stopped, Function<Infeasible, T> infeasible) {
            return stopped.apply(this);
        }

        /** How far the best blend may be from the optimum, relative to an objective above 1; infinite where that is not known. */
        public double gap() {
            if (best.isEmpty() || Double.isInfinite(bound)) {
                return Double.POSITIVE_INFINITY;
            }
            return (objective - bound) / Math.max(1, Math.abs(objective));
        }
    }

    /** Proven: no blend keeps all limits. {@link WhyNot} says which of them are against each other. */
    record Infeasible(long nodes) implements BlendAnswer {
        @Override
        public <T> T match(
                Function<Optimal, T> optimal, Function<Stopped, T> stopped, Function<Infeasible, T> infeasible) {
            return infeasible.apply(this);
        }
    }
}
