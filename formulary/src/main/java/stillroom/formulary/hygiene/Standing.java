package stillroom.formulary.hygiene;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How clean a vessel or tool is at a moment.
 *
 * @param last what was done to it last
 * @param lastUse when it last held something of a batch
 * @param expires when it no longer counts as sanitised; only where it was
 */
public record Standing(
        Tool tool, State state, Optional<Cleaning> last, Optional<Use> lastUse, Optional<Instant> expires) {
    /** What it may be used for follows from this. */
    public enum State {
        /** Nothing is noted about it. */
        UNKNOWN("nothing noted"),
        DIRTY("dirty"),
        CLEAN("clean, not sanitised"),
        SANITISED("sanitised"),
        EXPIRED("sanitised too long ago");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param acts what was done to it, oldest first */
    public static Standing of(Tool tool, List<Cleaning> acts, Optional<Use> lastUse, Instant now) {
        Optional<Cleaning> last = acts.stream().reduce((earlier, later) -> later);
        boolean usedSince = lastUse.isPresent()
                && last.filter(act -> !act.at().isBefore(lastUse.get().at())).isEmpty();
        if (usedSince) {
            return new Standing(tool, State.DIRTY, last, lastUse, Optional.empty());
        }
        if (last.isEmpty()) {
            return new Standing(tool, State.UNKNOWN, last, lastUse, Optional.empty());
        }
        return switch (last.get().act()) {
            case USED -> new Standing(tool, State.DIRTY, last, lastUse, Optional.empty());
            case CLEANED -> new Standing(tool, State.CLEAN, last, lastUse, Optional.empty());
            case SANITISED -> sanitised(tool, last.get(), lastUse, now);
        };
    }

    private static Standing sanitised(Tool tool, Cleaning act, Optional<Use> lastUse, Instant now) {
        Instant expires = act.at().plus(Duration.ofHours(tool.holdHours()));
        State state = now.isAfter(expires) ? State.EXPIRED : State.SANITISED;
        return new Standing(tool, state, Optional.of(act), lastUse, Optional.of(expires));
    }

    public boolean sanitised() {
        return state == State.SANITISED;
    }
}
