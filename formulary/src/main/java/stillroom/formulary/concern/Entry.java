package stillroom.formulary.concern;

import java.time.Instant;

/** A concern with its place in the log. */
public record Entry<C extends Concern>(int number, Instant at, String by, C concern) {}
