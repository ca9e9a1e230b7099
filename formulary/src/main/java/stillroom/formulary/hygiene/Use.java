package stillroom.formulary.hygiene;

import java.time.Instant;

/** When a vessel last held something. */
public record Use(Instant at, String batchCode, String product) {}
