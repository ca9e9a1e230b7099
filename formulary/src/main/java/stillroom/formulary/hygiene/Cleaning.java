package stillroom.formulary.hygiene;

import java.time.Instant;

/**
 * Something was done to a vessel or tool.
 *
 * @param agent what it was cleaned or sanitised with; for {@link Act#USED}, for what
 */
public record Cleaning(Instant at, String by, Act act, String agent) {
    /** What was done. */
    public enum Act {
        /** Used outside a batch, so that it is dirty. */
        USED,
        CLEANED,
        SANITISED
    }
}
