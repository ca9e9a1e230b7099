package stillroom.formulary.hygiene;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A vessel or a tool of the workshop.
 *
 * @param name as it is written on it and in batch logs
 * @param vessel whether batches are made in it; else a tool such as a spatula or a funnel
 * @param tare empty [g]
 * @param capacity most that it holds [g]
 * @param holdHours how long it counts as sanitised [h]
 */
public record Tool(
        String name, boolean vessel, Optional<Grams> tare, Optional<Grams> capacity, int holdHours, String note) {
    /** Overnight at most; common practice, no source. */
    public static final int USUAL_HOLD_HOURS = 12;

    public Tool {
        if (name.isBlank() || holdHours < 1) {
            throw new IllegalArgumentException("a tool has a name and a hold time of at least 1 h, not " + holdHours);
        }
    }
}
