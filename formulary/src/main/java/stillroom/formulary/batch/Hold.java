package stillroom.formulary.batch;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import stillroom.formulary.hygiene.HoldKind;

/**
 * Something stood in a vessel, or still stands.
 *
 * @param until when it was joined, filled or preserved; the present moment while it still stands
 * @param limitHours how long it may stand [h]
 */
public record Hold(String vessel, HoldKind kind, Instant from, Instant until, int limitHours) {
    /** Stable name of the deviation that an overrun is. */
    public String name() {
        return "hold " + kind.name().toLowerCase(java.util.Locale.ROOT) + " " + vessel;
    }

    public long hours() {
        return Duration.between(from, until).toHours();
    }

    public boolean over() {
        return Duration.between(from, until).compareTo(Duration.ofHours(limitHours)) > 0;
    }

    /** The reason that was given for an overrun: for the batch, or for a premix with its pour. */
    public Optional<String> reason(BatchState state) {
        return Optional.ofNullable(state.concerns().explained().get(name()))
                .or(() -> kind == HoldKind.PREMIX ? PremixHolds.notes(state, vessel) : Optional.empty());
    }

    /** One sentence for an overrun. */
    public String says() {
        return vessel + " (" + kind.words() + ") stood " + hours() + " h, allowed are " + limitHours + " h";
    }
}
