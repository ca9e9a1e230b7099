package stillroom.formulary.label;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A date or a period after opening, with the reason that a person recorded for it; without one there is none.
 *
 * @param bestBefore "best used before the end of"; empty where the product keeps longer than 30 months
 * @param monthsAfterOpening period after opening; empty where it does not apply (airless, single use)
 * @param reason the study, or why, in words
 * @param signedBy who stands for it
 */
public record Durability(
        Optional<LocalDate> bestBefore, Optional<Integer> monthsAfterOpening, String reason, String signedBy) {
    public Durability {
        if (reason.isBlank() || signedBy.isBlank()) {
            throw new IllegalArgumentException(
                    "a date or a period after opening needs a recorded reason and the person who signed it");
        }
        if (monthsAfterOpening.filter(months -> months < 1).isPresent()) {
            throw new IllegalArgumentException(
                    "period after opening is " + monthsAfterOpening.get() + " months, must be 1 or more");
        }
        if (bestBefore.isEmpty() && monthsAfterOpening.isEmpty()) {
            throw new IllegalArgumentException("a durability needs a date or a period after opening");
        }
    }
}
