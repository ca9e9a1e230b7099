package stillroom.formulary.pack;

import java.time.Instant;

/**
 * Somebody counted what is really there.
 *
 * @param correction what the book was off by, found less by the book
 */
public record PackCount(Instant at, String by, int found, int correction, String reason) {}
