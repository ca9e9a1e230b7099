package stillroom.formulary.rule;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The days on which a rule row counts.
 *
 * @param from first day on which a product newly placed on the market must satisfy it; empty: since before our record
 * @param until last day on which it counts; empty: still in force
 * @param stockUntil last day on which older stock may still be made available; empty: no transition of its own
 * @param amendedBy the act that brought the row, may be empty
 */
public record Span(
        Optional<LocalDate> from, Optional<LocalDate> until, Optional<LocalDate> stockUntil, String amendedBy) {
    public Span {
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            throw new IllegalArgumentException("valid until " + until.get() + " lies before " + from.get());
        }
    }

    public boolean countsOn(LocalDate day) {
        return !from.map(day::isBefore).orElse(false)
                && !until.map(day::isAfter).orElse(false);
    }

    /** Whether it begins after the day but within so many months of it. */
    public boolean comesWithin(LocalDate day, int months) {
        return from.map(first -> first.isAfter(day) && !first.isAfter(day.plusMonths(months)))
                .orElse(false);
    }
}
