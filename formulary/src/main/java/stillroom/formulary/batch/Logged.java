package stillroom.formulary.batch;

import java.time.Instant;

/** An entry of the log whose kind is known. */
public record Logged<E extends BatchEvent>(int number, Instant at, String by, E event) {}
