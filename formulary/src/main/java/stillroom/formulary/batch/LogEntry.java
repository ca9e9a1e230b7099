package stillroom.formulary.batch;

import java.time.Instant;

/**
 * One entry of a batch log.
 *
 * @param number 1, 2, 3 ... within the batch
 * @param by who did it
 */
public record LogEntry(int number, Instant at, String by, BatchEvent event) {}
