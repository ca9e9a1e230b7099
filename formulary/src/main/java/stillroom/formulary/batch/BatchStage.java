package stillroom.formulary.batch;

import java.util.Optional;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.concern.Concerns;

/** Where a batch stands. */
public enum BatchStage {
    PLANNED("planned"),
    IN_WORK("in work"),
    PAUSED("paused"),
    RESTING("resting"),
    FILLED("filled"),
    AWAITING("awaiting result"),
    HELD("bulk hold"),
    RELEASED("released"),
    REJECTED("rejected"),
    SCRAPPED("scrapped"),
    RECALLED("recalled");

    private final String words;

    BatchStage(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether nothing more is to be done to it by itself. */
    public boolean finished() {
        return switch (this) {
            case PLANNED, IN_WORK, PAUSED, RESTING, FILLED, AWAITING, HELD -> false;
            case RELEASED, REJECTED, SCRAPPED, RECALLED -> true;
        };
    }

    /** A hold shows over everything but what is lost anyway; a pause or an awaited result only where the work would go on. */
    static BatchStage of(BatchStage worked, Optional<BatchEvent.Decision> decision, Concerns concerns) {
        boolean held = concerns.stop(Concern.Stop.HOLD).isPresent();
        if (decision.isPresent()) {
            return switch (decision.get()) {
                case RELEASED -> held ? HELD : RELEASED;
                case REJECTED -> REJECTED;
                case SCRAPPED -> SCRAPPED;
                case RECALLED -> RECALLED;
            };
        }
        if (held) {
            return HELD;
        }
        boolean ready = worked == FILLED || worked == RESTING;
        if (ready && concerns.stop(Concern.Stop.AWAIT).isPresent()) {
            return AWAITING;
        }
        boolean working = worked == PLANNED || worked == IN_WORK;
        return working && concerns.stop(Concern.Stop.PAUSE).isPresent() ? PAUSED : worked;
    }
}
